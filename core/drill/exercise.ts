import type { Question } from '../answer/question.js';
import type { Quantity, Unit } from '../working/quantity.js';
import type { Step } from '../working/step.js';

/** What can be practised, in the order of a course. */
export const exerciseKinds = [
  'conversion',
  'chart-variation',
  'card',
  'amplitude',
  'azimuth',
  'transit',
  'coefficients',
  'polarity',
  'latitude',
] as const;

export type ExerciseKind = (typeof exerciseKinds)[number];

/** 1: one rule at a time, friendly numbers; 2: the usual task; 3: everything that makes it hard. */
export type Level = 1 | 2 | 3;

/** From the easiest. */
export const levels: readonly Level[] = [1, 2, 3];

/** What a learner is told: a quantity; a word of the trade by code; figures written out, such as a date; a table. */
export type GivenValue =
  | { readonly is: 'quantity'; readonly quantity: Quantity }
  | { readonly is: 'word'; readonly word: string }
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'table'; readonly columns: readonly Column[]; readonly rows: readonly (readonly number[])[] };

/** A column of numbers: a quantity's unit, or the whole hour of an almanac's page. */
export interface Column {
  readonly code: string;
  readonly unit: Unit | 'hour';
}

export interface Given {
  readonly code: string;
  readonly value: GivenValue;
}

/** An exercise as plain data: the words belong to the view. */
export interface Exercise {
  /** Unlike for all exercises of a set, e.g. `amplitude-2-harbour-3`. */
  readonly id: string;
  readonly seed: string;
  readonly kind: ExerciseKind;
  readonly level: Level;
  /** Names the sentence that sets the task. */
  readonly task: string;
  readonly givens: readonly Given[];
  /** In the order of the working, the steps before the results they lead to. */
  readonly asked: readonly Question[];
  /** The working, the same lines as the calculators write. */
  readonly steps: readonly Step[];
}

/** What a kind's own file makes; the rest is the same for all. */
export type Draft = Pick<Exercise, 'task' | 'givens' | 'asked' | 'steps'>;
