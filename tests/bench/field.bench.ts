/**
 * Field computations against the npm packages geomagnetism and magvar, side by side in
 * one run: `node --import tsx tests/bench/field.bench.ts`, or bundled first as it is shipped,
 * which is a quarter faster. Each contender takes turns,
 * and the best of its rounds counts, so that a busy machine slows all alike.
 */
import { createRequire } from 'node:module';
import { magneticElements, magneticField } from '../../core/field/magnetic-field.js';
import { magneticFieldGrid } from '../../core/field/magnetic-field-grid.js';
import { isolines } from '../../core/field/isolines.js';

interface Point {
  readonly latitude: number;
  readonly longitude: number;
}

interface TheirModel {
  point(place: readonly number[]): { decl: number };
}

const load = createRequire(import.meta.url);
const geomagnetism = load('geomagnetism') as { model(date: Date): TheirModel };
const magvar = load('magvar') as {
  magneticField(latitude: number, longitude: number, altitude: number, year: number): { declination: number };
};

const instant = new Date(Date.UTC(2027, 6, 2, 12));
const theirModel = geomagnetism.model(instant);

const points: Point[] = [];
for (let index = 0; index < 4000; index++) {
  points.push({ latitude: ((index * 137.5) % 178) - 89, longitude: ((index * 222.49) % 360) - 180 });
}

const contenders: Record<string, () => number> = {
  'our seven elements': () => sum((p) => magneticElements(p, instant).variation ?? 0),
  'our elements, changes, uncertainty': () => sum((p) => magneticField(p, instant).variation ?? 0),
  'geomagnetism, seven elements': () => sum((p) => theirModel.point([p.latitude, p.longitude]).decl),
  'magvar, seven elements': () => sum((p) => magvar.magneticField(p.latitude, p.longitude, 0, 2027.5).declination),
};

function sum(at: (point: Point) => number): number {
  let total = 0;
  for (const point of points) total += at(point);
  return total;
}

function millisecondsOf(work: () => unknown): number {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

const best: Record<string, number> = {};
for (let round = 0; round < 40; round++) {
  for (const [name, work] of Object.entries(contenders)) {
    best[name] = Math.min(best[name] ?? Infinity, millisecondsOf(work));
  }
}
const perPoint = (name: string) => ((best[name] as number) / points.length) * 1000;
for (const name of Object.keys(contenders)) console.log(`${name}: ${perPoint(name).toFixed(3)} µs a point`);
for (const theirs of ['geomagnetism, seven elements', 'magvar, seven elements']) {
  for (const ours of ['our seven elements', 'our elements, changes, uncertainty']) {
    console.log(`${ours}: ${(perPoint(theirs) / perPoint(ours)).toFixed(1)} times the throughput of ${theirs}`);
  }
}

const WORLD = 65_160;
let grid = magneticFieldGrid({ step: 1, instant });
let gridTime = Infinity;
for (let round = 0; round < 40; round++) {
  gridTime = Math.min(gridTime, millisecondsOf(() => (grid = magneticFieldGrid({ step: 1, instant }))));
}
console.log(`our 1° grid of the world, ${WORLD} points: ${gridTime.toFixed(2)} ms`);
for (const theirs of ['geomagnetism, seven elements', 'magvar, seven elements']) {
  console.log(`our grid: ${((perPoint(theirs) * WORLD) / 1000 / gridTime).toFixed(0)} times faster than by ${theirs}`);
}

const coarse = magneticFieldGrid({ step: 2, instant });
const levels = Array.from({ length: 36 }, (_, index) => 10 * index - 170);
for (const [name, map] of [['2°', coarse], ['1°', grid]] as const) {
  let time = Infinity;
  for (let round = 0; round < 20; round++) time = Math.min(time, millisecondsOf(() => isolines(map, 'variation', levels)));
  console.log(`36 lines of equal variation from the ${name} grid: ${time.toFixed(1)} ms`);
}
