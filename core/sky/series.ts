import { cosOfWave } from '../angle/trigonometry.js';

/**
 * One coordinate of an orbit as the theories of the planets and the Moon write it: by power
 * of the time in Julian centuries since J2000.0 a constant, and then the waves, three
 * figures each: size in units, phase in degrees, speed in degrees a century.
 */
export interface Series {
  readonly unit: number;
  readonly powers: readonly (readonly number[])[];
}

/** Longitude and latitude in degrees, distance in astronomical units. */
export interface OrbitSeries {
  readonly longitude: Series;
  readonly latitude: Series;
  readonly distance: Series;
}

/** The coordinate at a time in centuries. */
export function seriesAt({ unit, powers }: Series, century: number): number {
  let value = 0;
  // Read in place, from the highest power down and the smallest wave up: it is asked for often.
  for (let power = powers.length - 1; power >= 0; power -= 1) {
    const figures = powers[power] as readonly [number, ...number[]];
    let waves = 0;
    for (let index = figures.length - 3; index > 0; index -= 3) {
      waves += (figures[index] as number) * cosOfWave((figures[index + 1] as number) + (figures[index + 2] as number) * century);
    }
    value = value * century + figures[0] + waves * unit;
  }
  return value;
}
