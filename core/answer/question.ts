/** What a known mistake leads to; the code names the mistake. */
export interface Distractor<T> {
  readonly code: string;
  readonly value: T;
}

/** How an answer is written: three figures; with E or W; with + or − (degrees all three). */
export type AnswerForm = 'bearing' | 'error' | 'signed';

/** A `step` may be left open; the `result` counts. */
export type Part = 'step' | 'result';

export interface NumberQuestion {
  readonly is: 'number';
  readonly code: string;
  readonly part: Part;
  readonly form: AnswerForm;
  /** Degrees either way that still count as right. */
  readonly tolerance: number;
  /** Degrees to the hundredth, in the range and sign of the form. */
  readonly answer: number;
  readonly distractors: readonly Distractor<number>[];
}

export interface ChoiceQuestion {
  readonly is: 'choice';
  readonly code: string;
  readonly part: Part;
  readonly options: readonly string[];
  readonly answer: string;
  readonly distractors: readonly Distractor<string>[];
}

export type Question = NumberQuestion | ChoiceQuestion;
