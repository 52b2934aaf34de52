import { angleFromTo } from '../angle/wrap.js';

/** What is supposed of one observation, each one standard deviation. */
export interface SightDoubts {
  /** Of a bearing read from the compass, degrees. */
  readonly reading: number;
  /** Of the time, seconds. */
  readonly time: number;
  /** Of the position in each direction, nautical miles. */
  readonly position: number;
  /** Of the altitude of a body seen at the horizon, degrees: refraction there is not what tables say. */
  readonly horizonAltitude: number;
  /** Of the level of the azimuth circle, degrees. */
  readonly tilt: number;
}

/**
 * Common practice, no source: half a degree for a bearing read at sea, a few seconds for
 * the time, a mile for the place, a tenth of a degree for refraction at the horizon, half a
 * degree for the tilt of the circle.
 */
export const usualDoubts: SightDoubts = { reading: 0.5, time: 5, position: 1, horizonAltitude: 0.1, tilt: 0.5 };

/** Up to this latitude, degrees, the usual doubt of the horizon holds; each degree beyond adds so much to it. */
const COLD = { from: 60, each: 0.01 };

/**
 * What is supposed of the altitude of a body at the horizon in a latitude, degrees: 0.1, and beyond
 * 60° more, 0.2 in 70° and 0.3 in 80°, where cold air and mirage bend the light as no table says.
 * Common practice, no source for the figures.
 */
export function usualHorizonDoubt(latitude: number): number {
  return usualDoubts.horizonAltitude + COLD.each * Math.max(0, Math.abs(latitude) - COLD.from);
}

/** Half the turn of a bearing that a change of one argument makes, up and down, degrees; one side where the other has no value. */
export function effectOf(change: number, of: (shift: number) => number | null): number | null {
  const [below, here, above] = [of(-change), of(0), of(change)];
  if (below !== null && above !== null) return Math.abs(angleFromTo(below, above)) / 2;
  if (here === null) return null;
  const other = below ?? above;
  return other === null ? null : Math.abs(angleFromTo(here, other));
}
