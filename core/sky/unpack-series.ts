import { once } from '../text/once.js';
import { packedNumbers, signed } from '../text/packed-numbers.js';
import type { MoonCoordinate, MoonSeries } from './moon-coordinate.js';
import type { OrbitSeries, Series } from './series.js';

/** Decimals of the phase of a wave, and of the speed of a row by its largest: what the size needs. */
export function decimalsFor(size: number): number {
  const digits = String(size).length;
  return Math.max(0, digits - 2 + (digits > 5 ? 1 : 0));
}

/** A row of a series: its speed, then size and phase by turns, speed and phases without their decimal points. */
function rowOf(signs: string): number[] {
  const row = packedNumbers(signs);
  let largest = 0;
  // Turned in place: hundreds of rows are read before a first answer.
  for (let at = 1; at < row.length; at += 2) {
    const size = row[at] as number;
    largest = Math.max(largest, size);
    (row[at + 1] as number) /= 10 ** decimalsFor(size);
  }
  row[0] = signed(row[0] as number) / 10 ** decimalsFor(largest);
  return row;
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

/** An orbit from the text that the build makes of its coordinates. */
export function unpackOrbit(meanMotion: number, text: string): OrbitSeries {
  const read = once(() => text.split(',,,').map(unpackSeries) as [Series, Series, Series]);
  return {
    meanMotion,
    get coordinates() {
      return read();
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

/** The Moon's from the texts that the build makes of each coordinate, its series and its rows by turns. */
export function unpackMoon(meanMotion: number, ...texts: readonly string[]): MoonSeries {
  const coordinate = (at: number): MoonCoordinate => ({ series: unpackSeries(texts[at] as string), sun: unpackRows(texts[at + 1] as string) as unknown as MoonCoordinate['sun'] });
  const read = once(() => [coordinate(0), coordinate(2), coordinate(4)] as const);
  return {
    meanMotion,
    get longitude() {
      return read()[0];
    },
    get latitude() {
      return read()[1];
    },
    get distance() {
      return read()[2];
    },
  };
}
