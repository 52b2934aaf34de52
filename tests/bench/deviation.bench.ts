/**
 * Time to refit a swing of 36 headings, as after each key typed:
 * `node --import tsx tests/bench/deviation.bench.ts`. A frame is 16 ms, on a machine four times slower.
 */
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import { deviationTable } from '../../core/deviation/deviation-table.js';
import { fitDeviation } from '../../core/deviation/fit-deviation.js';
import { chance, randomShip, readSwing } from '../core/deviation/seeded-swings.js';

function report(name: string, work: (round: number) => unknown): void {
  const times: number[] = [];
  for (let round = 0; round < 400; round++) {
    const start = process.hrtime.bigint();
    work(round);
    times.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  times.sort((a, b) => a - b);
  const at = (part: number): string => (times[Math.floor(times.length * part)] as number).toFixed(3);
  console.log(`${name}: median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms`);
}

const luck = chance(36);
const swings = Array.from({ length: 20 }, () => readSwing(randomShip('iron', luck, 3, 16), luck, 36, 0.3));
const swing = (round: number) => swings[round % swings.length] ?? [];
report('fit of 36 headings, approximate', (round) => fitDeviation(swing(round)));
report('fit of 36 headings, exact', (round) => fitDeviation(swing(round), { model: 'exact' }));
report('table of 36 rows and 360 headings both ways', (round) => {
  const table = deviationTable(swing(round));
  for (let heading = 0; heading < 360; heading++) table.toCompass(table.toMagnetic(heading));
});
report('exact card and 360 headings both ways', (round) => {
  const curve = deviationCurve({ kind: 'exact', coefficients: { A: 0, B: 0.1 + round / 1e4, C: -0.05, D: 0.04, E: 0 } });
  for (let heading = 0; heading < 360; heading++) curve.toCompass(curve.toMagnetic(heading) ?? 0);
});
