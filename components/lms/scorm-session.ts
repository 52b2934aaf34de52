import type { ScoreDetail, ScoredAnswer } from '../shared/score-event.js';
import type { LmsStatus } from './connection.js';
import type { ScormApi } from './find-api.js';
import { lessonStates, resumeLesson, takePassMark } from './lesson.js';
import type { LessonTarget } from './lesson.js';
import { packStates, unpackStates } from './pack-state.js';
import { ScormCalls } from './scorm-calls.js';
import type { Pair, ScormVersion, Standing } from './scorm-version.js';

const SUSPEND_DATA = 'cmi.suspend_data';

/** A platform may do without these (SCORM 1.2 RTE 3.4.4); that it refuses them is no trouble. */
const isOptional = ([element]: Pair): boolean => /\.(min|max|suspend_data|exit)$/.test(element);

function numberIn(text: string | null): number | null {
  const number = text === null || text.trim() === '' ? NaN : Number(text);
  return Number.isFinite(number) ? number : null;
}

/** One sitting at a SCORM run-time. */
export class ScormSession {
  readonly #calls: ScormCalls;
  readonly #version: ScormVersion;
  readonly #target: LessonTarget;
  readonly #begun = performance.now();
  #finished = false;
  #scored = false;
  /** The best so far: another go at the exercises takes nothing away. */
  #best: Standing = { scaled: 0, passed: false, complete: false };
  /** Where the next interaction goes; null where the platform keeps none. */
  #interactions: number | null = null;

  constructor(api: ScormApi, version: ScormVersion, target: LessonTarget) {
    this.#calls = new ScormCalls(api, version);
    this.#version = version;
    this.#target = target;
  }

  get #seconds(): number {
    return (performance.now() - this.#begun) / 1000;
  }

  /** Of the platform, 0 to 1; null where it has none. */
  get #passMark(): number | null {
    const mark = numberIn(this.#calls.get(this.#version.passMark));
    return mark === null ? null : mark / this.#version.passMarkScale;
  }

  open(): Extract<LmsStatus, 'open' | 'refused' | 'review' | 'trouble'> {
    const calls = this.#calls;
    const version = this.#version;
    const opened = calls.initialize();
    const statuses = version.statuses.map((element) => calls.get(element));
    // A frame around the lesson may have opened the session already: then it refuses, but answers.
    if (!opened && statuses.every((status) => !status)) return 'refused';
    takePassMark(this.#target, this.#passMark);
    resumeLesson(this.#target, unpackStates(calls.get(SUSPEND_DATA) ?? ''));
    if (['browse', 'review'].includes(calls.get(version.mode) ?? '')) return 'review';
    this.#best = {
      scaled: (numberIn(calls.get(version.rawScore)) ?? 0) / 100,
      passed: statuses.includes('passed'),
      complete: statuses.some((status) => ['completed', 'passed', 'failed'].includes(status ?? '')),
    };
    this.#interactions = numberIn(calls.get('cmi.interactions._count'));
    if (this.#best.complete) return 'open';
    for (const pair of version.begun) calls.set(pair);
    calls.set(version.exit(false));
    return calls.commit() ? 'open' : 'trouble';
  }

  /** Writes a score and the answers given since; `save` sends them. */
  report(score: ScoreDetail, answers: readonly ScoredAnswer[]): void {
    const mark = this.#passMark;
    const passed = mark === null ? score.passed : score.scaled >= mark;
    this.#best = {
      scaled: Math.max(this.#best.scaled, score.scaled),
      passed: this.#best.passed || passed,
      complete: this.#best.complete || score.complete,
    };
    for (const answer of answers) {
      if (this.#interactions === null) break;
      for (const pair of this.#version.interaction(this.#interactions, answer, new Date())) this.#calls.set(pair);
      this.#interactions += 1;
    }
    this.#scored = true;
  }

  /** Writes and sends everything as it stands; whether the platform took it. */
  save(): boolean {
    if (this.#finished) return true;
    const calls = this.#calls;
    const version = this.#version;
    const state = packStates(lessonStates(this.#target), version.room);
    const pairs = [
      // Once more what earlier answers came to: a platform that was away has them again.
      ...(this.#scored ? version.standing(this.#best) : []),
      ...(state === null ? [] : [[SUSPEND_DATA, state] as const]),
      version.sessionTime(this.#seconds),
      version.exit(this.#best.complete),
    ];
    const taken = pairs.map((pair) => calls.set(pair) || isOptional(pair));
    return calls.commit() && taken.every(Boolean);
  }

  /** Saves and ends the session, once. */
  finish(onlyLook: boolean): void {
    if (this.#finished) return;
    if (onlyLook) this.#calls.set(this.#version.sessionTime(this.#seconds));
    else this.save();
    this.#finished = true;
    this.#calls.finish();
  }
}
