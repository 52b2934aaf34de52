import { isBegun, untouched } from '../drill/drill-state.js';
import type { DrillState } from '../drill/drill-state.js';
import type { ScoreDetail } from '../shared/score-event.js';

/** What a lesson asks: a drill, or a part of the page with drills in it. */
export type LessonTarget = Element | Document;

interface Drill extends Element {
  readonly result?: ScoreDetail | null;
  state?: DrillState | null;
  passMark?: string | number;
  readonly seed?: string | null;
}

function drillsOf(target: LessonTarget): Drill[] {
  const inside = [...target.querySelectorAll<Drill>('lubber-drill')];
  return 'matches' in target && target.matches('lubber-drill') ? [target, ...inside] : inside;
}

/** How the learner stands over all drills of a lesson: each counts alike, all must be passed. Null before any is there. */
export function lessonScore(target: LessonTarget): ScoreDetail | null {
  const results = drillsOf(target).flatMap(({ result }) => (result ? [result] : []));
  if (results.length === 0) return null;
  const sum = (of: (result: ScoreDetail) => number): number => results.reduce((total, each) => total + of(each), 0);
  return {
    scaled: sum(({ scaled }) => scaled) / results.length,
    passed: results.every(({ passed }) => passed),
    complete: results.every(({ complete }) => complete),
    seconds: sum(({ seconds }) => seconds),
    // Exercises are unlike within a drill only.
    answers: results.flatMap(({ answers }, index) => (index === 0 ? answers : answers.map((each) => ({ ...each, id: `${index + 1}.${each.id}` })))),
  };
}

export function lessonStates(target: LessonTarget): DrillState[] {
  return drillsOf(target).flatMap(({ state }) => (state ? [state] : []));
}

/** A number of five figures, the same for the same text: a seed short enough to be copied from a sheet. */
function seedOf(text: string): string {
  const sum = [...text].reduce((total, letter) => (total * 31 + letter.charCodeAt(0)) % 90_000, 0);
  return String(10_000 + sum);
}

/**
 * Gives drills that draw their own exercises those of one learner, by a name that is theirs at every
 * launch: before the platform has said what it kept, the questions are already those that it kept.
 */
export function drawFor(target: LessonTarget, learner: string): void {
  drillsOf(target).forEach((drill, index) => {
    const { state } = drill;
    if (!drill.seed && state && !isBegun(state)) drill.state = { ...state, seed: seedOf(`${learner} ${index}`) };
  });
}

/** The platform's pass mark, 0 to 1, goes before the lesson's: the learner is told the one he or she is judged by. */
export function takePassMark(target: LessonTarget, mark: number | null): void {
  if (mark === null) return;
  for (const drill of drillsOf(target)) drill.passMark = Math.max(0, mark);
}

/** Each drill goes on where it stopped; one that belongs to another order ignores it. */
export function resumeLesson(target: LessonTarget, states: readonly DrillState[]): void {
  drillsOf(target).forEach((drill, index) => {
    const state = states[index];
    if (state) drill.state = state;
  });
}

/**
 * What a platform kept, and over it what the learner has done since `before`, while it was asked:
 * attempts that were kept stay counted, but what was typed stands. Another set is left as it was kept.
 */
export function withNewer(kept: readonly DrillState[], before: readonly DrillState[], now: readonly DrillState[]): DrillState[] {
  return kept.map((state, index) => {
    const [then, here] = [before[index], now[index]];
    const same = here && (['seed', 'kind', 'level', 'count'] as const).every((name) => state[name] === here[name]);
    const isNewer = (at: number): boolean => here?.exercises[at] !== untouched && here?.exercises[at] !== then?.exercises[at];
    if (!same || !here.exercises.some((_, at) => isNewer(at))) return state;
    const exercises = here.exercises.map((each, at) => {
      const old = state.exercises[at] ?? untouched;
      if (!isNewer(at)) return old;
      return old === untouched ? each : { ...old, texts: { ...old.texts, ...each.texts } };
    });
    return { ...state, at: here.at, exercises };
  });
}
