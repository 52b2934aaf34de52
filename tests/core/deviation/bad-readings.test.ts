import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { reference } from '../../support/reference.js';
import { assertCoefficients } from './ships.js';
import { assertClose } from '../../support/assert-close.js';
import type { ApproximateCoefficients } from '../../../core/deviation/approximate-deviation.js';
import { chance, randomShip, readSwing } from './seeded-swings.js';

interface Observed {
  readonly id: string;
  readonly headings: number[];
  readonly deviations: number[];
  readonly outlier: number | null;
  readonly lsq: ApproximateCoefficients;
  readonly rms: number;
}

// deviation-observed.json: swings with noise and gross errors, fitted outside this project.
const observed = reference<{ cases: Observed[] }>('deviation-observed.json').cases;

function fitOf({ headings, deviations }: Observed) {
  return fitDeviation(headings.map((heading, i) => ({ heading, deviation: deviations[i] as number })));
}

test('observed swings: least squares through all readings equals the independent values to 1e-4°', () => {
  for (const swing of observed) {
    const fit = fitOf(swing);
    assertCoefficients(fit.coefficients, swing.lsq, 1e-4, swing.id);
    assertClose(fit.rms ?? NaN, swing.rms, 1e-4, swing.id);
  }
});

test('observed swings: every gross error of 6 to 10° is the first suspect', () => {
  const bad = observed.filter(({ outlier }) => outlier !== null);
  assert.ok(bad.length > 90);
  for (const swing of bad) assert.equal(fitOf(swing).suspects[0], swing.outlier, swing.id);
});

test('observed swings: at most one clean swing in fifty raises a false alarm', () => {
  const clean = observed.filter(({ outlier }) => outlier === null);
  const alarms = clean.filter((swing) => fitOf(swing).suspects.length > 0);
  assert.ok(alarms.length <= clean.length / 50 + 1, `${alarms.length} of ${clean.length}`);
});

// The bounds are wider than those of the full run in tests/bench by three standard deviations of the smaller number.
for (const [least, most] of [
  [1, 5],
  [10, 16],
] as const) {
  test(`400 seeded ships of ${least} to ${most}°, 16 points, σ 0.3°: slips of 3° are found, clean swings left in peace`, () => {
    const luck = chance(most);
    let alarms = 0;
    let found = 0;
    let foundLarge = 0;
    for (let i = 0; i < 400; i++) {
      const readings = readSwing(randomShip('iron', luck, least, most), luck, 16, 0.3);
      const place = Math.floor(luck.even() * 16);
      const slipped = (slip: number): boolean => {
        const bad = readings.map((reading, j) => (j === place ? { ...reading, deviation: reading.deviation + slip } : reading));
        return fitDeviation(bad).suspects.includes(place);
      };
      if (fitDeviation(readings).suspects.length > 0) alarms++;
      if (slipped(3)) found++;
      if (slipped(-6 - 4 * luck.even())) foundLarge++;
    }
    assert.ok(alarms <= 16, `${alarms} false alarms`);
    assert.ok(found >= 390, `${found} slips of 3° found`);
    assert.ok(foundLarge >= 398, `${foundLarge} slips of 6 to 10° found`);
  });
}

test('two bad readings do not hide each other', () => {
  const luck = chance(7);
  let both = 0;
  for (let i = 0; i < 100; i++) {
    const readings = readSwing(randomShip('iron', luck, 2, 6), luck, 24, 0.3);
    const bad = readings.map((reading, j) => (j === 4 || j === 17 ? { ...reading, deviation: reading.deviation + 5 } : reading));
    const { suspects } = fitDeviation(bad);
    if (suspects.includes(4) && suspects.includes(17)) both++;
  }
  assert.ok(both >= 98, `${both} of 100`);
});
