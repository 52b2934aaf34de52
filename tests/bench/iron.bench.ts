/**
 * One full change of the teaching bench: what must be worked out anew while a slider moves.
 * Run: node --import tsx tests/bench/iron.bench.ts
 */
import { ironCautions } from '../../core/iron/iron-cautions.js';
import { coefficientSteps } from '../../core/iron/coefficient-steps.js';
import { exactCoefficients } from '../../core/iron/exact-coefficients.js';
import { ironCurve } from '../../core/iron/iron-curve.js';
import { inducedPolarity } from '../../core/iron/induced-polarity.js';

const ship = { a: -0.1, b: 0.01, c: 0.04, d: -0.01, e: -0.15, f: 0.01, g: 0.02, h: 0.02, k: -0.06, P: 1500, Q: -500, R: 3000 };
const field = { h: 18000, z: -44000 };
const pieces: Record<string, (turn: number) => unknown> = {
  'curve of 72 headings with parts and directive force': (turn) => ironCurve({ ...ship, c: ship.c + turn * 1e-6 }, field, 5),
  'needle and cautions': (turn) => ironCautions({ ...ship, c: ship.c + turn * 1e-6 }, field, 5),
  'coefficients, their working, polarity': (turn) => [
    exactCoefficients(ship, field, turn % 30),
    coefficientSteps(ship, field, turn % 30),
    inducedPolarity(field, turn),
  ],
};

function times(work: (turn: number) => unknown, turns: number): number[] {
  return Array.from({ length: turns }, (_, turn) => {
    const start = performance.now();
    work(turn);
    return performance.now() - start;
  }).sort((a, b) => a - b);
}

pieces['all of it'] = (turn) => [
  ironCurve({ ...ship, c: ship.c + turn * 1e-6 }, field, 5),
  ironCautions({ ...ship, c: ship.c + turn * 1e-6 }, field, 5),
  exactCoefficients(ship, field, 5),
  coefficientSteps(ship, field, 5),
  inducedPolarity(field, turn),
];
const first = times(pieces['all of it'], 1)[0] ?? NaN;
console.log(`cold, the very first change: ${first.toFixed(3)} ms`);
for (const [name, work] of Object.entries(pieces)) {
  const sorted = times(work, 2000);
  const at = (share: number): string => (sorted[Math.floor(share * sorted.length)] ?? NaN).toFixed(3);
  console.log(`${name}: median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms, worst ${at(0.9999)} ms`);
}
