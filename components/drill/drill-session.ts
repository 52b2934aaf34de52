import type { Exercise } from '../../core/drill/exercise.js';
import { anySeed, countOf, exercisesOf, levelOf } from './drill-order.js';
import { freshState, isBegun, untouched, withExercise } from './drill-state.js';
import type { DrillOrder, DrillState, ExerciseState } from './drill-state.js';
import { loadState, saveState } from './drill-storage.js';
import { readState } from './read-state.js';
import { StopWatch } from './stop-watch.js';

const orderNames = ['seed', 'kind', 'level', 'count'] as const;

/** The exercise a learner is at. */
export interface Now {
  readonly exercise: Exercise;
  readonly each: ExerciseState;
}

/**
 * One learner's way through a set: which exercises, how far, how long. What the page orders
 * comes first; where it says nothing, what was stored, or what was drawn here.
 */
export class DrillSession {
  readonly watch = new StopWatch();
  exercises: readonly Exercise[] = [];
  state: DrillState | null = null;
  storageKey: string | undefined;

  #own: DrillOrder;
  #asked: Partial<DrillOrder> = {};
  #offered: unknown = null;
  #named: string | undefined;

  constructor(usual: Omit<DrillOrder, 'seed'>) {
    this.#own = { seed: anySeed(), ...usual };
  }

  /** A state from outside, taken up when the session is next prepared. */
  offer(state: unknown): void {
    this.#offered = state;
    this.exercises = [];
  }

  /** Draws the exercises where the order has changed, and takes up what was offered or kept. */
  prepare(asked: Partial<DrillOrder>): void {
    this.#asked = asked;
    if (this.storageKey && this.storageKey !== this.#named) {
      // A page may name its storage late: what was worked at here already is the newer. Another name is another learner.
      if (this.#named || (this.state && !isBegun(this.state))) this.exercises = [];
      this.#named = this.storageKey;
    }
    const order = { ...this.#own, ...asked };
    if (this.exercises.length > 0 && orderNames.every((name) => this.state?.[name] === order[name])) return;
    const offered = this.#offered ?? (this.storageKey ? loadState(this.storageKey) : null);
    this.#offered = null;
    this.#adopt(offered);
    this.#draw();
    this.state = readState(offered, { ...this.#own, ...asked }) ?? this.state;
  }

  /** The seed of a stored set is as good as one drawn now. */
  #adopt(offered: unknown): void {
    const { seed, kind, level, count } = (offered ?? {}) as Partial<Record<keyof DrillOrder, unknown>>;
    if (typeof seed !== 'string' || typeof kind !== 'string') return;
    this.#own = { seed, kind, level: levelOf(level) ?? this.#own.level, count: countOf(count) ?? this.#own.count };
  }

  #draw(): void {
    const order = { ...this.#own, ...this.#asked };
    this.exercises = exercisesOf(order);
    this.state = freshState(order);
  }

  /** The same exercises from the start. */
  restart(): void {
    this.#draw();
    this.#keep();
  }

  /** Other exercises, of another kind or level where they are given. */
  drawOthers(chosen: Partial<Pick<DrillOrder, 'kind' | 'level'>>): void {
    this.#own = { ...this.#own, ...chosen, seed: anySeed() };
    this.restart();
  }

  get now(): Now | null {
    const exercise = this.state && this.exercises[this.state.at];
    return exercise && this.state ? { exercise, each: this.state.exercises[this.state.at] ?? untouched } : null;
  }

  /** Changes the exercise the learner is at. */
  change(change: Partial<ExerciseState>): void {
    if (!this.state) return;
    this.state = withExercise(this.state, this.state.at, change);
    this.#keep();
  }

  go(at: number): void {
    if (!this.state) return;
    this.state = { ...this.state, at };
    this.#keep();
  }

  /** Adds the time spent since the last action, and stores. */
  #keep(): void {
    if (!this.state) return;
    this.state = { ...this.state, seconds: this.state.seconds + this.watch.lap() };
    if (this.storageKey) saveState(this.storageKey, this.state);
  }
}
