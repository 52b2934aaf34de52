import { cosOfWave } from '../angle/trigonometry.js';

/**
 * One coordinate of an orbit as the theories of the planets and the Moon write it: by power
 * of the time in Julian centuries since J2000.0 a constant, and then rows of waves.
 *
 * A row is a speed in degrees a century, and for the wave of that speed its size in units and
 * its phase in degrees; and then the same for the wave that is faster by the body's mean
 * motion, by twice that, and so on, for so the waves come.
 */
export interface Series {
  readonly unit: number;
  readonly powers: readonly (readonly [constant: number, ...rows: readonly (readonly number[])[]])[];
}

export interface OrbitSeries {
  /** Degrees a century. */
  readonly meanMotion: number;
  /** Longitude and latitude in degrees, distance in astronomical units. */
  readonly coordinates: readonly [longitude: Series, latitude: Series, distance: Series];
}

function wavesOf(row: readonly number[], meanMotion: number, century: number): number {
  let speed = row[0] as number;
  let waves = 0;
  for (let index = 1; index < row.length; index += 2) {
    waves += (row[index] as number) * cosOfWave((row[index + 1] as number) + speed * century);
    speed += meanMotion;
  }
  return waves;
}

/** The coordinate at a time in centuries. */
export function seriesAt({ unit, powers }: Series, meanMotion: number, century: number): number {
  let value = 0;
  // Read in place, from the highest power down and the smallest wave up: it is asked for often.
  for (let power = powers.length - 1; power >= 0; power -= 1) {
    const rows = powers[power] as Series['powers'][number];
    let waves = 0;
    for (let row = rows.length - 1; row > 0; row -= 1) waves += wavesOf(rows[row] as readonly number[], meanMotion, century);
    value = value * century + rows[0] + waves * unit;
  }
  return value;
}
