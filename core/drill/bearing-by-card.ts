import { deviationByCard } from '../deviation/deviation-by-card.js';
import { convertDirection } from '../sight/chain.js';
import { anyCoefficients, cardRows, givenCard } from './any-ship.js';
import type { Chance } from './chance.js';
import { courseMistakes } from '../answer/course-mistakes.js';
import type { Draft } from './exercise.js';
import { given } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

/**
 * A bearing by compass made true, or the compass bearing to expect of a true one. The
 * deviation belongs to the ship's head; null where that of the bearing would do as well.
 */
export function bearingByCard(chance: Chance, to: 'true' | 'compass', tolerances: Tolerances): Draft | null {
  const rows = cardRows(anyCoefficients(chance, 3), 15);
  const card = { kind: 'table', rows } as const;
  const from = to === 'true' ? 'compass' : 'true';
  const bearing = chance.between(0, 359);
  const head = chance.between(0, 359);
  const variation = chance.either(3, 25, 2);
  const chain = convertDirection({ direction: { value: bearing, by: from }, head: { value: head, by: 'compass' }, variation, deviation: card });
  const { deviation } = chain;
  const ofBearing = deviationByCard(card, bearing);
  if (deviation === null || ofBearing === null || Math.abs(ofBearing - deviation) < 2 * tolerances.deviation) return null;
  const way = to === 'true' ? 1 : -1;
  return {
    task: `conversion.bearing-${from}-to-${to}`,
    givens: [given('headOfShip', head, 'bearing'), given(`${from}Bearing`, bearing, 'bearing'), given('variation', variation, 'error'), givenCard(rows)],
    asked: [
      numberQuestion({
        code: 'deviation',
        part: 'step',
        form: 'error',
        tolerance: tolerances.deviation,
        answer: deviation,
        mistakes: [
          { code: 'deviation-of-bearing', value: ofBearing },
          { code: 'sign', value: -deviation },
        ],
      }),
      numberQuestion({
        code: `${to}BearingAsked`,
        part: 'result',
        form: 'bearing',
        tolerance: tolerances.course,
        answer: bearing + way * (variation + deviation),
        mistakes: [
          { code: 'deviation-of-bearing', value: bearing + way * (variation + ofBearing) },
          ...courseMistakes(bearing, way, variation, deviation),
        ],
      }),
    ],
    steps: chain.steps,
  };
}
