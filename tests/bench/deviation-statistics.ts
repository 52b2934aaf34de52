/**
 * How often bad readings are found, clean swings doubted, and intervals right:
 * `node --import tsx tests/bench/deviation-statistics.ts [swings [seed]]`, 20,000 and 0 if left out.
 * Seeded, so that two runs of one version print the same figures.
 */
import { coefficientNames, deviationAt } from '../../core/deviation/approximate-deviation.js';
import { fitDeviation } from '../../core/deviation/fit-deviation.js';
import { studentLimit } from '../../core/deviation/student.js';
import { chance, randomShip, readSwing, type Law } from '../core/deviation/seeded-swings.js';

const swings = Number(process.argv[2] ?? 20_000);
const seed = Number(process.argv[3] ?? 0);
const SIGMA = 0.3;
const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(2)} %`;

function intervals(): void {
  const luck = chance(seed + 1);
  const held = coefficientNames.map(() => 0);
  const limit = studentLimit(0.95, 11);
  for (let i = 0; i < swings; i++) {
    const truth = { A: luck.normal(), B: 4 * luck.normal(), C: 4 * luck.normal(), D: 3 * luck.normal(), E: luck.normal() };
    const fit = fitDeviation(readSwing((heading) => deviationAt(truth, heading), luck, 16, SIGMA));
    coefficientNames.forEach((name, j) => {
      const miss = Math.abs((fit.coefficients[name] ?? NaN) - truth[name]);
      if (miss <= limit * (fit.standardErrors[name] ?? NaN)) held[j] = (held[j] ?? 0) + 1;
    });
  }
  const each = coefficientNames.map((name, j) => `${name} ${percent(held[j] ?? 0, swings)}`).join(', ');
  console.log(`95 % intervals, ${swings} swings of 16: ${each}, pooled ${percent(held.reduce((a, b) => a + b, 0), 5 * swings)}`);
}

/** Clean swings and those doubted, slips of 2.5° and those found: the ships of 16 points together. */
const together = { swings: 0, alarms: 0, found: 0 };

function badReadings(law: Law, least: number, most: number, count: number): void {
  const luck = chance(seed + most + count);
  const number = Math.ceil(swings / 4);
  const slips = [2, 2.5, 3, 6, 10];
  const found = slips.map(() => 0);
  let alarms = 0;
  let exact = 0;
  for (let i = 0; i < number; i++) {
    const readings = readSwing(randomShip(law, luck, least, most), luck, count, SIGMA);
    const clean = fitDeviation(readings);
    if (clean.suspects.length > 0) alarms++;
    if (clean.warnings.some(({ code }) => code === 'exact-fit-better')) exact++;
    const place = Math.floor(luck.even() * count);
    const sign = luck.even() < 0.5 ? -1 : 1;
    slips.forEach((slip, j) => {
      const bad = readings.map((reading, k) => (k === place ? { ...reading, deviation: reading.deviation + sign * slip } : reading));
      if (fitDeviation(bad).suspects.includes(place)) found[j] = (found[j] ?? 0) + 1;
    });
  }
  if (count === 16) {
    together.swings += number;
    together.alarms += alarms;
    together.found += found[slips.indexOf(2.5)] ?? 0;
  }
  const hits = slips.map((slip, j) => `${slip}° ${percent(found[j] ?? 0, number)}`).join(', ');
  console.log(`${law} ${least} to ${most}°, ${count} points: false alarms ${percent(alarms, number)}; found ${hits}; exact fit offered ${percent(exact, number)}`);
}

intervals();
for (const law of ['iron', 'series'] as const) {
  for (const [least, most] of [[1, 5], [5, 10], [10, 16], [16, 30]] as const) badReadings(law, least, most, 16);
}
console.log(`16 points, all ships: false alarms ${percent(together.alarms, together.swings)}, 2.5° found ${percent(together.found, together.swings)}`);
for (const count of [8, 12, 24, 36]) badReadings('iron', 2, 10, count);
