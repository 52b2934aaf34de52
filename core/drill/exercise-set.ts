import { checkRange } from '../angle/check-number.js';
import type { Exercise, ExerciseKind, Level } from './exercise.js';
import { exerciseFrom } from './generate.js';
import type { Tolerances } from '../answer/tolerances.js';

/** So many exercises of one kind and level. */
export interface SetPart {
  readonly kind: ExerciseKind;
  readonly level: Level;
  readonly count: number;
}

export interface SetOrder {
  readonly seed: string;
  readonly parts: readonly SetPart[];
  readonly tolerances?: Partial<Tolerances>;
}

/** More would be no set for a learner. */
const MOST = 500;

/**
 * The exercises of a set, part by part, each from the seed of the set and its own number: a
 * set made longer keeps its first exercises. Throws `RangeError` naming what is wrong.
 */
export function exerciseSet({ seed, parts, tolerances = {} }: SetOrder): Exercise[] {
  const kindsDone = new Map<string, number>();
  return parts.flatMap(({ kind, level, count }, index) => {
    checkRange(`parts[${index}].count`, count, 0, MOST);
    return Array.from({ length: Math.floor(count) }, () => {
      // Numbered by kind and level, so that adding another kind changes nothing of this one.
      const number = (kindsDone.get(`${kind} ${level}`) ?? 0) + 1;
      kindsDone.set(`${kind} ${level}`, number);
      return exerciseFrom({ kind, level, seed: `${seed}-${number}`, tolerances });
    });
  });
}

/**
 * The parts of a set of so many exercises, 0 to 500, of one level that goes round the kinds in
 * turn; none without a kind. Throws `RangeError` naming `count`.
 */
export function mixedParts(kinds: readonly ExerciseKind[], level: Level, count: number): SetPart[] {
  checkRange('count', count, 0, MOST);
  if (kinds.length === 0) return [];
  return Array.from({ length: Math.floor(count) }, (_, index) => ({ kind: kinds[index % kinds.length] as ExerciseKind, level, count: 1 }));
}
