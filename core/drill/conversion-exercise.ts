import type { Reckoning } from '../sight/chain-steps.js';
import { convertDirection } from '../sight/chain.js';
import { bearingByCard } from './bearing-by-card.js';
import type { Chance } from './chance.js';
import { courseByCard } from './course-by-card.js';
import { courseMistakes } from '../answer/course-mistakes.js';
import type { Draft, Level } from './exercise.js';
import { given } from './given.js';
import { gyroAgainstMagnetic } from './gyro-against-magnetic.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

/** A course by one reckoning turned into another, variation and deviation given. */
function magneticCourse(chance: Chance, tolerances: Tolerances): Draft {
  const [from, to] = chance.pick<readonly [Reckoning, Reckoning]>([['compass', 'true'], ['true', 'compass']]);
  const value = chance.between(0, 359);
  const variation = chance.either(2, 20);
  const deviation = chance.either(2, 6);
  const { values, steps } = convertDirection({ direction: { value, by: from }, variation, deviation });
  const way = to === 'true' ? 1 : -1;
  const answer = value + way * (variation + deviation);
  return {
    task: `conversion.${from}-to-${to}`,
    givens: [given(`${from}Course`, value, 'bearing'), given('variation', variation, 'error'), given('deviation', deviation, 'error')],
    asked: [
      numberQuestion({
        code: 'magneticCourse',
        part: 'step',
        form: 'bearing',
        tolerance: tolerances.course,
        answer: values.magnetic ?? answer,
        mistakes: [
          { code: to === 'true' ? 'deviation-sign' : 'variation-sign', value: value - way * (to === 'true' ? deviation : variation) },
          { code: 'other-step', value: value + way * (to === 'true' ? variation : deviation) },
        ],
      }),
      numberQuestion({
        code: `${to}Course`,
        part: 'result',
        form: 'bearing',
        tolerance: tolerances.course,
        answer,
        mistakes: courseMistakes(value, way, variation, deviation),
      }),
    ],
    steps,
  };
}

/** A course or bearing by gyro and true, either way. */
function gyroCourse(chance: Chance, tolerances: Tolerances): Draft {
  const [from, to] = chance.pick<readonly [Reckoning, Reckoning]>([['gyro', 'true'], ['true', 'gyro']]);
  const value = chance.between(0, 359);
  const gyroError = chance.either(1, 3, 2);
  const { values, steps } = convertDirection({ direction: { value, by: from }, gyroError });
  const answer = values[to] ?? value;
  return {
    task: `conversion.${from}-to-${to}`,
    givens: [given(`${from}Course`, value, 'bearing'), given('gyroError', gyroError, 'error')],
    asked: [
      numberQuestion({
        code: `${to}Course`,
        part: 'result',
        form: 'bearing',
        tolerance: Math.min(tolerances.course, tolerances.arithmetic),
        answer,
        mistakes: [
          { code: 'gyro-sign', value: 2 * value - answer },
          { code: 'gyro-omitted', value },
        ],
      }),
    ],
    steps,
  };
}

/** Courses and bearings from one reckoning into another: by single values, by a card, by both compasses. */
export function conversionExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  if (level === 1) return chance.below(3) === 0 ? gyroCourse(chance, tolerances) : magneticCourse(chance, tolerances);
  if (level === 2) return chance.below(3) === 0 ? courseByCard(chance, 'true', tolerances) : bearingByCard(chance, 'true', tolerances);
  return chance.pick([
    () => courseByCard(chance, 'compass', tolerances),
    () => bearingByCard(chance, 'compass', tolerances),
    () => gyroAgainstMagnetic(chance, tolerances),
  ])();
}
