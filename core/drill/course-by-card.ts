import { deviationCurve } from '../deviation/deviation-curve.js';
import { convertDirection } from '../sight/chain.js';
import { anyCoefficients, cardRows, givenCard } from './any-ship.js';
import type { Chance } from './chance.js';
import { courseMistakes } from '../answer/course-mistakes.js';
import type { Draft } from './exercise.js';
import { given } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

/** A course by compass made true with a card, or a true course to be steered by compass. */
export function courseByCard(chance: Chance, to: 'true' | 'compass', tolerances: Tolerances): Draft | null {
  const rows = cardRows(anyCoefficients(chance, 3), 15);
  const card = { kind: 'table', rows } as const;
  const from = to === 'true' ? 'compass' : 'true';
  const value = chance.between(0, 359);
  const variation = chance.either(3, 25, 2);
  const chain = convertDirection({ direction: { value, by: from }, variation, deviation: card });
  const answer = chain.values[to];
  const { deviation } = chain;
  if (answer === null || deviation === null) return null;
  const curve = deviationCurve(card);
  const way = to === 'true' ? 1 : -1;
  // On the way to compass a variation taken wrongly makes another magnetic course, and that another deviation.
  const wrongVariation = (wrong: number): number => {
    const found = convertDirection({ direction: { value, by: from }, variation: wrong, deviation: card }).deviation;
    return value + way * (wrong + (found ?? deviation));
  };
  const wrongVariations: Readonly<Record<string, number>> = { 'variation-sign': -variation, 'variation-omitted': 0 };
  const mistakes = courseMistakes(value, way, variation, deviation).map((mistake) => {
    const wrong = wrongVariations[mistake.code];
    return wrong === undefined ? mistake : { ...mistake, value: wrongVariation(wrong) };
  });
  // Entered with the true course, or with the opposite heading.
  const wrongHeading = (code: string, heading: number) => ({ code, value: value + way * (variation + (curve.at(heading) ?? 0)) });
  return {
    task: `conversion.${from}-to-${to}-by-card`,
    givens: [given(`${from}Course`, value, 'bearing'), given('variation', variation, 'error'), givenCard(rows)],
    asked: [
      numberQuestion({
        code: 'deviation',
        part: 'step',
        form: 'error',
        tolerance: tolerances.deviation,
        answer: deviation,
        mistakes: [
          { code: 'sign', value: -deviation },
          { code: 'true-as-compass', value: curve.at(to === 'true' ? answer : value) ?? 0 },
        ],
      }),
      numberQuestion({
        code: `${to}Course`,
        part: 'result',
        form: 'bearing',
        tolerance: tolerances.course,
        answer,
        mistakes: [
          ...mistakes,
          ...(to === 'true' ? [] : [wrongHeading('true-as-compass', value)]),
          wrongHeading('opposite-heading', (to === 'true' ? value : answer) + 180),
        ],
      }),
    ],
    steps: chain.steps,
  };
}
