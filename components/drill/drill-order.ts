import { exerciseKinds, levels } from '../../core/drill/exercise.js';
import type { Exercise, ExerciseKind, Level } from '../../core/drill/exercise.js';
import { exerciseSet, mixedParts } from '../../core/drill/exercise-set.js';
import type { DrillOrder } from './drill-state.js';

/** More would make a sheet of a hundred pages. */
const MOST = 100;

/** A page may set a list of kinds, too. */
const wordsOf = (text: unknown): readonly string[] => String(text).split(/[\s,]+/);

/** The kinds a text names, parted by spaces; all of them where it names none. */
function kindsOf(text: string): readonly ExerciseKind[] {
  const words = wordsOf(text);
  const named = exerciseKinds.filter((kind) => words.includes(kind));
  return named.length > 0 ? named : exerciseKinds;
}

/** Whether every word of a text is a kind. */
export const namesKinds = (text: string): boolean => wordsOf(text).every((word) => (exerciseKinds as readonly string[]).includes(word));

function whole(value: unknown, least: number, most: number): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : value;
  return typeof number === 'number' && Number.isFinite(number) ? Math.min(most, Math.max(least, Math.floor(number))) : null;
}

export const levelOf = (value: unknown): Level | null => whole(value, 1, levels.length) as Level | null;
export const countOf = (value: unknown): number | null => whole(value, 1, MOST);
export const attemptsOf = (value: unknown): number | null => whole(value, 0, 100);

/** A pass mark, 0 to 1; above 1 it is a percentage. */
export function passMarkOf(value: unknown): number | null {
  const number = typeof value === 'string' && value.trim() !== '' ? Number(value.replace(',', '.').replace('%', '')) : value;
  if (typeof number !== 'number' || !(number >= 0 && number <= 100)) return null;
  return number > 1 ? number / 100 : number;
}

/** The exercises of an order. */
export function exercisesOf({ seed, kind, level, count }: DrillOrder): Exercise[] {
  return exerciseSet({ seed, parts: mixedParts(kindsOf(kind), level as Level, count) });
}

/** A seed of five figures, short enough to be copied from a sheet. */
export function anySeed(): string {
  return String(10_000 + Math.floor(Math.random() * 90_000));
}
