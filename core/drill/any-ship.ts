import { roundTo } from '../angle/format-angle.js';
import { deviationAt } from '../deviation/approximate-deviation.js';
import type { ApproximateCoefficients } from '../deviation/approximate-deviation.js';
import type { DeviationRow } from '../deviation/deviation-card.js';
import type { Chance } from './chance.js';
import type { Given, Level } from './exercise.js';
import { givenTable } from './given.js';

/** Largest B or C by level, degrees: a compass well corrected, one that waits for its adjuster, a bad one. */
const SEMICIRCULAR: Record<Level, number> = { 1: 4, 2: 6, 3: 9 };

/** Coefficients of a ship as they come, degrees: D is positive in nearly all (common practice). */
export function anyCoefficients(chance: Chance, level: Level): ApproximateCoefficients {
  const most = SEMICIRCULAR[level];
  return {
    A: chance.between(-1, 1, 2),
    B: chance.either(1, most, 2),
    C: chance.either(1, most, 2),
    D: chance.between(1, 2 + level, 2),
    E: chance.between(-1, 1, 2),
  };
}

/** Her card every so many degrees by compass, deviations in halves of a degree as cards print them. */
export function cardRows(coefficients: ApproximateCoefficients, every: number): DeviationRow[] {
  return Array.from({ length: 360 / every }, (_, index) => {
    const heading = index * every;
    return { heading, deviation: roundTo(deviationAt(coefficients, heading) * 2, 0) / 2 };
  });
}

export function givenCard(rows: readonly DeviationRow[]): Given {
  return givenTable(
    'card',
    [
      { code: 'headingByCompass', unit: 'bearing' },
      { code: 'deviation', unit: 'error' },
    ],
    rows.map(({ heading, deviation }) => [heading, deviation]),
  );
}
