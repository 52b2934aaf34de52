import assert from 'node:assert/strict';
import { test } from 'node:test';
import { seriesWithout } from '../../../core/deviation/leave-one-out.js';
import { fitModel, type ModelFit } from '../../../core/deviation/model-fit.js';
import { checkedReadings, type WeighedReading } from '../../../core/deviation/observations.js';
import { assertClose } from '../../support/assert-close.js';
import { chance } from './seeded-swings.js';

/** Inverse of a matrix by Gauss and Jordan's elimination with pivots (school method). */
function inverseOf(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i++) {
    const best = rows.slice(i).reduce((most, row, k) => (Math.abs(row[i] as number) > Math.abs(rows[most]?.[i] as number) ? i + k : most), i);
    [rows[i], rows[best]] = [rows[best] as number[], rows[i] as number[]];
    const pivot = (rows[i] as number[])[i] as number;
    rows[i] = (rows[i] as number[]).map((value) => value / pivot);
    rows.forEach((row, k) => {
      const factor = row[i] as number;
      if (k !== i) rows[k] = row.map((value, j) => value - factor * ((rows[i] as number[])[j] as number));
    });
  }
  return rows.map((row) => row.slice(size));
}

/** The five-term series through readings by the normal equations, written out (any book of adjustment). */
function byTheBook(readings: readonly WeighedReading[]) {
  const lines = readings.map(({ heading }) => {
    const h = (heading * Math.PI) / 180;
    return [1, Math.sin(h), Math.cos(h), Math.sin(2 * h), Math.cos(2 * h)];
  });
  const total = (of: (line: readonly number[], reading: WeighedReading) => number): number =>
    lines.reduce((sum, line, k) => sum + (readings[k] as WeighedReading).weight * of(line, readings[k] as WeighedReading), 0);
  const five = [0, 1, 2, 3, 4];
  const inverse = inverseOf(five.map((i) => five.map((j) => total((line) => (line[i] as number) * (line[j] as number)))));
  const right = five.map((i) => total((line, { deviation }) => (line[i] as number) * deviation));
  const times = (row: readonly number[], list: readonly number[]): number => row.reduce((sum, value, i) => sum + value * (list[i] as number), 0);
  const estimate = inverse.map((row) => times(row, right));
  const residuals = lines.map((line, k) => (readings[k] as WeighedReading).deviation - times(line, estimate));
  return {
    estimate,
    residuals,
    squares: residuals.reduce((sum, residual, k) => sum + (readings[k] as WeighedReading).weight * residual ** 2, 0),
    cofactors: inverse,
    leverages: lines.map((line, k) => (readings[k] as WeighedReading).weight * times(line, inverse.map((row) => times(row, line)))),
  };
}

function assertAlike(fit: ModelFit, book: ReturnType<typeof byTheBook>, name: string): void {
  const close = (got: ArrayLike<number>, want: readonly number[], what: string): void => {
    assert.equal(got.length, want.length, `${name} ${what}`);
    want.forEach((value, i) => assertClose(got[i] as number, value, 1e-9, `${name} ${what} ${i}`));
  };
  close(fit.estimate, book.estimate, 'estimate');
  close(fit.residuals, book.residuals, 'residuals');
  close([fit.squares], [book.squares], 'squares');
  close(fit.solution.cofactors, book.cofactors.flat(), 'cofactors');
  close(fit.solution.leverages, book.leverages, 'leverages');
}

test('readings taken out one after the other leave what least squares gives for the rest', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const { even, normal } = chance(seed);
    const count = 9 + (seed % 28);
    const observations = Array.from({ length: count }, (_, i) => ({
      heading: (i * 360) / count + 5 * even(),
      deviation: 4 * normal(),
      ...(seed % 2 ? { sigma: 0.2 + even() } : {}),
    }));
    let readings = checkedReadings(observations).list;
    let fit = fitModel('approximate', readings) as ModelFit;
    for (let removed = 1; removed <= 3; removed++) {
      const place = Math.floor(even() * readings.length);
      fit = seriesWithout(fit, readings, place);
      readings = readings.filter((_, k) => k !== place);
      assertAlike(fit, byTheBook(readings), `swing ${seed}, ${removed} out,`);
      assert.equal(fit.changes.length, 5 * readings.length);
    }
  }
});
