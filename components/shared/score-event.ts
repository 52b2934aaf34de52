/** One answer as it was given and marked. */
export interface ScoredAnswer {
  /** Of the exercise, unlike for all of a set. */
  readonly id: string;
  /** What was asked, by code. */
  readonly asked: string;
  /** As it was typed, or the code of the option chosen; empty where the answer was shown instead. */
  readonly given: string;
  readonly correct: boolean;
  /** The mistake that explains a wrong answer, by code; null where none is known or it is right. */
  readonly mistake: string | null;
  /** Degrees, or the code of the right option. */
  readonly expected: number | string;
  /** Degrees either way; null for a choice. */
  readonly tolerance: number | null;
}

/** How a learner stands after an answer. */
export interface ScoreDetail {
  /** 0 to 1 over the whole set, exercises still open counted as 0. */
  readonly scaled: number;
  /** Whether that has reached the pass mark. */
  readonly passed: boolean;
  /** Whether no exercise is open any more. */
  readonly complete: boolean;
  /** Time spent, over all sittings. */
  readonly seconds: number;
  /** The last answer to each result asked, in the order of the set. */
  readonly answers: readonly ScoredAnswer[];
}

/** Fired after each answer that was marked; bubbles and crosses shadow roots; the detail is plain data. */
export class LubberScoreEvent extends Event {
  static readonly type = 'lubber-score';

  readonly detail: ScoreDetail;

  constructor(detail: ScoreDetail) {
    super(LubberScoreEvent.type, { bubbles: true, composed: true });
    this.detail = detail;
  }
}

declare global {
  interface HTMLElementEventMap {
    'lubber-score': LubberScoreEvent;
  }
}
