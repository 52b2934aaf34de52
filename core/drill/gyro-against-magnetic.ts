import { wrap360 } from '../angle/wrap.js';
import { convertDirection } from '../sight/chain.js';
import type { Chance } from './chance.js';
import type { Draft } from './exercise.js';
import { given } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import { readingSteps } from './reading-steps.js';
import { sightQuestions } from './sight-questions.js';
import type { Tolerances } from '../answer/tolerances.js';

/** Heads read together by a gyro of known error and by the magnetic compass: the deviation of the latter. */
export function gyroAgainstMagnetic(chance: Chance, tolerances: Tolerances): Draft | null {
  const gyro = chance.between(0, 359.5, 2);
  const gyroError = chance.either(0.5, 3, 2);
  const { values, steps } = convertDirection({ direction: { value: gyro, by: 'gyro' }, gyroError });
  const trueHead = values.true;
  if (trueHead === null) return null;
  const variation = chance.either(3, 25, 2);
  const compassBearing = wrap360(trueHead - variation - chance.either(1, 8, 2));
  const reading = { compass: 'magnetic', compassBearing, variation } as const;
  const wrong = [
    { code: 'gyro-sign', value: gyro - gyroError },
    { code: 'gyro-omitted', value: gyro },
  ];
  const [, ...rest] = sightQuestions({ ...reading, trueBearing: trueHead, wrongBearings: wrong }, tolerances);
  return {
    task: 'conversion.gyro-against-magnetic',
    givens: [
      given('gyroHeading', gyro, 'bearing'),
      given('gyroError', gyroError, 'error'),
      given('compassHeadingRead', compassBearing, 'bearing'),
      given('variation', variation, 'error'),
    ],
    asked: [
      numberQuestion({ code: 'trueHeading', part: 'step', form: 'bearing', tolerance: tolerances.course, answer: trueHead, mistakes: wrong }),
      ...rest,
    ],
    steps: [...steps, ...readingSteps(trueHead, reading)],
  };
}
