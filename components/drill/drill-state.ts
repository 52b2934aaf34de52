/** How one exercise stands. */
export interface ExerciseState {
  /** What stands in the fields, by the code of the question. */
  readonly texts: Readonly<Record<string, string>>;
  /** What stood there when it was marked last. */
  readonly marked: Readonly<Record<string, string>>;
  readonly tries: number;
  /** By the last marking, 0 to 1. */
  readonly score: number;
  readonly hinted: boolean;
  /** Whether the learner asked for the answer. */
  readonly shown: boolean;
}

/** Where a learner stopped, as plain data: stored, it goes on there. */
export interface DrillState {
  readonly seed: string;
  readonly kind: string;
  readonly level: number;
  readonly count: number;
  /** The exercise looked at, counted from 0; `count` is the summary. */
  readonly at: number;
  /** Time spent up to the last action. */
  readonly seconds: number;
  readonly exercises: readonly ExerciseState[];
}

export type DrillOrder = Pick<DrillState, 'seed' | 'kind' | 'level' | 'count'>;

export const untouched: ExerciseState = { texts: {}, marked: {}, tries: 0, score: 0, hinted: false, shown: false };

export function freshState(order: DrillOrder): DrillState {
  return { ...order, at: 0, seconds: 0, exercises: Array.from({ length: order.count }, () => untouched) };
}

/** Whether anything has been done in a set. */
export function isBegun({ at, exercises }: DrillState): boolean {
  return at > 0 || exercises.some((each) => each !== untouched);
}

/** Whether an exercise is closed: solved, given up, or no attempt left; 0 attempts are no limit. */
export function isDone({ score, shown, tries }: ExerciseState, attempts: number): boolean {
  return score === 1 || shown || (attempts > 0 && tries >= attempts);
}

/** The state with one exercise changed. */
export function withExercise(state: DrillState, index: number, change: Partial<ExerciseState>): DrillState {
  return { ...state, exercises: state.exercises.map((each, i) => (i === index ? { ...each, ...change } : each)) };
}
