import { packedNumbers, signed } from '../text/packed-numbers.js';
import type { OrbitSeries, Series } from './series.js';

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

/** A coordinate from the text that the build makes of it: the unit, and for each power of the time its constant and its rows. */
export function unpackSeries(text: string): Series {
  const [unit, ...powers] = text.split(',,');
  return {
    unit: Number(unit),
    powers: powers.map((power) => {
      const [constant, ...rows] = power.split(',');
      return [Number(constant), ...rows.map(rowOf)] as const;
    }),
  };
}

/** An orbit from the text that the build makes of its coordinates: read when they are asked for, since most pages want no planet, or one. */
export function unpackOrbit(meanMotion: number, text: string): OrbitSeries {
  let read: OrbitSeries['coordinates'] | undefined;
  return {
    meanMotion,
    get coordinates() {
      return (read ??= text.split(',,,').map(unpackSeries) as [Series, Series, Series]);
    },
  };
}

/** Whole numbers, from the text that the build makes of them. */
export function unpackRow(signs: string): number[] {
  return packedNumbers(signs).map(signed);
}

/** Rows of whole numbers, from the text that the build makes of them. */
export function unpackRows(rows: string): number[][] {
  return rows.split(',').map(unpackRow);
}
