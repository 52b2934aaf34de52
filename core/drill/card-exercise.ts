import { wrap360 } from '../angle/wrap.js';
import type { DeviationRow } from '../deviation/deviation-card.js';
import { deviationCurve } from '../deviation/deviation-curve.js';
import { convertDirection } from '../sight/chain.js';
import { anyCoefficients, cardRows, givenCard } from './any-ship.js';
import type { Chance } from './chance.js';
import type { Draft, Level } from './exercise.js';
import type { Distractor } from '../answer/question.js';
import { given } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

/** Near enough for straight lines between the rows to be as good as the curve through them, as a rule. */
const EVERY = 15;
/** Where a straight line is further off, degrees, who rounds to the half degree as well would be half a degree out. */
const STRAIGHT = 0.25;

/** How far off the curve an officer comes who goes between two rows in proportion, degrees; backwards from a magnetic heading too. */
function missByStraightLine(rows: readonly DeviationRow[], compassHeading: number, deviation: number, backwards: boolean): number {
  const place = wrap360(compassHeading) / EVERY;
  const row = Math.floor(place);
  const [before, after] = [row, row + 1].map((at) => rows[at % rows.length]?.deviation ?? 0) as [number, number];
  const miss = before + (place - row) * (after - before) - deviation;
  return Math.abs(backwards ? miss / (1 + (after - before) / EVERY) : miss);
}

/** Deviations the card gives for headings taken by mistake. */
function wrongHeadings(at: (heading: number) => number | null, wrong: readonly Distractor<number>[]): Distractor<number>[] {
  return wrong.flatMap(({ code, value }) => {
    const deviation = at(value);
    return deviation === null ? [] : [{ code, value: deviation }];
  });
}

/**
 * Reading a card: on a heading it lists, with a bearing beside it to tempt; between its rows;
 * from a magnetic heading, for which it has to be entered backwards.
 */
export function cardExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  const rows = cardRows(anyCoefficients(chance, level === 1 ? 2 : 3), EVERY);
  const card = { kind: 'table', rows } as const;
  const curve = deviationCurve(card);
  const heading = chance.below(24) * EVERY + (level === 1 ? 0 : chance.between(4, 11));
  const bearing = chance.between(0, 359);
  const chain = convertDirection({ direction: { value: heading, by: level === 3 ? 'magnetic' : 'compass' }, deviation: card });
  const { deviation } = chain;
  if (deviation === null) return null;
  const backwards = level === 3;
  if (missByStraightLine(rows, backwards ? heading - deviation : heading, deviation, backwards) > STRAIGHT) return null;
  const tempting = wrongHeadings(curve.at, [
    { code: 'deviation-of-bearing', value: bearing },
    ...(level === 3 ? [{ code: 'magnetic-as-compass', value: heading }, { code: 'card-backwards', value: heading + deviation }] : []),
    { code: 'opposite-heading', value: heading + 180 },
    { code: 'row-before', value: Math.floor(heading / EVERY) * EVERY - (level === 1 ? EVERY : 0) },
    { code: 'row-after', value: Math.floor(heading / EVERY) * EVERY + EVERY },
  ]);
  const mistakes = [{ code: 'sign', value: -deviation }, ...tempting];
  return {
    task: level === 3 ? 'card.magnetic' : 'card.compass',
    givens: [given(level === 3 ? 'magneticHeading' : 'headOfShip', heading, 'bearing'), given('bearingBeside', bearing, 'bearing'), givenCard(rows)],
    asked: [
      numberQuestion({ code: 'deviation', part: level === 3 ? 'step' : 'result', form: 'error', tolerance: tolerances.arithmetic, answer: deviation, mistakes }),
      ...(level === 3
        ? [
            numberQuestion({
              code: 'compassHeading',
              part: 'result',
              form: 'bearing',
              tolerance: tolerances.arithmetic,
              answer: heading - deviation,
              mistakes: [
                { code: 'deviation-sign', value: heading + deviation },
                ...tempting.map(({ code, value }) => ({ code, value: heading - value })),
                { code: 'deviation-omitted', value: heading },
              ],
            }),
          ]
        : []),
    ],
    steps: chain.steps.filter(({ symbol }) => symbol === 'δ' || (level === 3 && symbol === 'C')),
  };
}
