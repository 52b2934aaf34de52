import { checkFinite } from '../angle/check-number.js';
import { amplitudeExercise } from './amplitude-exercise.js';
import { azimuthExercise } from './azimuth-exercise.js';
import { cardExercise } from './card-exercise.js';
import { chanceFrom } from './chance.js';
import type { Chance } from './chance.js';
import { chartVariationExercise } from './chart-variation-exercise.js';
import { coefficientsExercise } from './coefficients-exercise.js';
import { conversionExercise } from './conversion-exercise.js';
import { exerciseKinds, levels } from './exercise.js';
import type { Draft, Exercise, ExerciseKind, Level } from './exercise.js';
import type { Question } from '../answer/question.js';
import { latitudeExercise } from './latitude-exercise.js';
import { polarityExercise } from './polarity-exercise.js';
import { assessorsTolerances } from '../answer/tolerances.js';
import type { Tolerances } from '../answer/tolerances.js';
import { transitExercise } from './transit-exercise.js';

const makers: Readonly<Record<ExerciseKind, (chance: Chance, level: Level, tolerances: Tolerances) => Draft | null>> = {
  conversion: conversionExercise,
  'chart-variation': chartVariationExercise,
  card: cardExercise,
  amplitude: amplitudeExercise,
  azimuth: azimuthExercise,
  transit: transitExercise,
  coefficients: coefficientsExercise,
  polarity: polarityExercise,
  latitude: latitudeExercise,
};

export interface ExerciseOrder {
  readonly kind: ExerciseKind;
  readonly level: Level;
  /** Any text: the same order and seed give the same exercise, in every engine. */
  readonly seed: string;
  /** The assessor's unless given; degrees, 0 or more. */
  readonly tolerances?: Partial<Tolerances>;
}

/** Most kinds need one or two; a body that stands fit for a bearing, some tens. */
const MOST_DRAWS = 2000;

/** An exercise teaches where a mistake would show: each result that is a number has one at least that does. */
function teaches({ asked }: Draft): boolean {
  const shows = (question: Question): boolean => question.distractors.length > 0;
  const results = asked.filter(({ part }) => part === 'result');
  return results.some(shows) && (results.length > 1 || results.every(shows));
}

function checkOrder({ kind, level, seed, tolerances = {} }: ExerciseOrder): void {
  if (!exerciseKinds.includes(kind)) throw new RangeError(`kind: ${String(kind)} is no kind of exercise`);
  if (!levels.includes(level)) throw new RangeError(`level: ${String(level)} is not 1, 2 or 3`);
  if (typeof seed !== 'string') throw new RangeError(`seed: ${String(seed)} is no text`);
  for (const [name, value] of Object.entries(tolerances)) {
    checkFinite(`tolerances.${name}`, value);
    if (value < 0) throw new RangeError(`tolerances.${name}: ${value} is negative`);
  }
}

/**
 * An exercise of a kind and level, drawn by its seed. Throws `RangeError` naming what is wrong
 * with the order.
 */
export function exerciseFrom(order: ExerciseOrder): Exercise {
  checkOrder(order);
  const { kind, level, seed } = order;
  const tolerances = { ...assessorsTolerances, ...order.tolerances };
  const chance = chanceFrom(`${kind} ${level} ${seed}`);
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const draft = makers[kind](chance, level, tolerances);
    if (draft && teaches(draft)) return { id: `${kind}-${level}-${seed}`, seed, kind, level, ...draft };
  }
  // Only tolerances so wide that no mistake shows lead here.
  throw new RangeError('tolerances: too wide for any mistake to show');
}
