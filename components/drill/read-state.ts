import type { DrillOrder, DrillState, ExerciseState } from './drill-state.js';
import { untouched } from './drill-state.js';

type Bag = Readonly<Record<string, unknown>>;

const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);
const held = (value: unknown, most: number): number => (typeof value === 'number' && value > 0 ? Math.min(value, most) : 0);

/** No learner types more. */
const LONGEST = 200;

function texts(value: unknown): Record<string, string> {
  if (!isBag(value)) return {};
  const pairs = Object.entries(value).flatMap(([code, text]) => (typeof text === 'string' ? [[code, text.slice(0, LONGEST)] as const] : []));
  return Object.fromEntries(pairs);
}

function readExercise(value: unknown): ExerciseState {
  if (!isBag(value)) return untouched;
  return {
    texts: texts(value['texts']),
    marked: texts(value['marked']),
    tries: Math.floor(held(value['tries'], 1000)),
    score: held(value['score'], 1),
    hinted: value['hinted'] === true,
    shown: value['shown'] === true,
  };
}

/** A state that came from outside, its own parts only; null where it is none, or belongs to another order. */
export function readState(value: unknown, order: DrillOrder): DrillState | null {
  if (!isBag(value) || !Array.isArray(value['exercises'])) return null;
  const same = (['seed', 'kind', 'level', 'count'] as const).every((name) => value[name] === order[name]);
  if (!same) return null;
  const stored = value['exercises'] as readonly unknown[];
  return {
    ...order,
    at: Math.floor(held(value['at'], order.count)),
    seconds: held(value['seconds'], 1e9),
    exercises: Array.from({ length: order.count }, (_, index) => readExercise(stored[index])),
  };
}
