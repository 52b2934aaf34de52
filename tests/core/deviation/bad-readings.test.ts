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

// By definition: the first suspect is the reading without which the others agree best, tried one by one.
test('where headings are uneven, the suspect is the reading that the others are best without', () => {
  const headings = [0, 10, 20, 30, 40, 50, 60, 75, 90, 105, 120, 180, 200, 290, 300, 310];
  const luck = chance(31);
  let apart = 0;
  for (let swing = 0; swing < 40; swing++) {
    const ship = randomShip('iron', luck, 1, 3);
    const place = swing % headings.length;
    const readings = headings.map((heading, i) => ({ heading, deviation: ship(heading) + 0.2 * (2 * luck.even() - 1) + (i === place ? 4 : 0) }));
    const [suspect] = fitDeviation(readings).suspects;
    if (suspect === undefined) continue;
    const without = readings.map((_, left) => fitDeviation(readings.filter((__, i) => i !== left)).rms ?? NaN);
    assert.equal(suspect, without.indexOf(Math.min(...without)), `swing ${swing}`);
    // Not always the one that lies furthest from the curve through all.
    const sizes = fitDeviation(readings).residuals.map((residual) => Math.abs(residual ?? 0));
    if (sizes.indexOf(Math.max(...sizes)) !== suspect) apart++;
  }
  assert.ok(apart > 0, 'the draw holds readings that draw the curve to themselves');
});

// The slip is what a reading lies off the curve of the others, not off one it has drawn to itself: 0.3° is none, whatever the scatter (common practice).
test('of readings that agree to a hundredth a slip of 0.35° is doubted, one of 0.25° is not', () => {
  const suspects = (slip: number): readonly number[] => {
    const luck = chance(5);
    const readings = Array.from({ length: 16 }, (_, i) => ({ heading: i * 22.5, deviation: 2 * Math.sin((i * Math.PI) / 8) + 0.01 * (2 * luck.even() - 1) + (i === 6 ? slip : 0) }));
    return fitDeviation(readings).suspects;
  };
  assert.deepEqual([suspects(0.35), suspects(0.25)], [[6], []]);
});
