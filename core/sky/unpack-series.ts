import { packedNumbers, signed } from '../text/packed-numbers.js';
import type { Series } from './series.js';

/** Decimals of the phase of a wave, and of the speed of a row by its largest: what the size needs. */
export function decimalsFor(size: number): number {
  const digits = String(size).length;
  return Math.max(0, digits - 2 + (digits > 5 ? 1 : 0));
}

/** A row of a series: its speed, then size and phase by turns, speed and phases without their decimal points. */
function rowOf(signs: string): number[] {
  const [speed = 0, ...waves] = packedNumbers(signs);
  const largest = Math.max(...waves.filter((_, at) => at % 2 === 0));
  return [signed(speed) / 10 ** decimalsFor(largest), ...waves.map((number, at) => (at % 2 === 0 ? number : number / 10 ** decimalsFor(waves[at - 1] as number)))];
}

/** What belongs to one power of the time in a series, from the text that the build makes of its rows. */
export function unpackPower(constant: number, rows: string): Series['powers'][number] {
  return [constant, ...rows.split(',').map(rowOf)];
}

/** Rows of whole numbers, from the text that the build makes of them. */
export function unpackRows(rows: string): number[][] {
  return rows.split(',').map((signs) => packedNumbers(signs).map(signed));
}
