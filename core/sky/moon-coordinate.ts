import type { Series } from './series.js';

/**
 * One coordinate of the Moon: her mean motion and the waves the planets raise in `series`,
 * and in its unit the waves the Sun raises.
 *
 * Each row of those has multiples of D, M, F and M′ and a size, and then the sizes for one M′
 * more, two more and so on: sines in longitude and latitude, cosines in distance.
 */
export interface MoonCoordinate {
  readonly series: Series;
  readonly sun: readonly (readonly [elongation: number, sunAnomaly: number, latitudeArgument: number, moonAnomaly: number, ...sizes: readonly number[]])[];
}

export interface MoonSeries {
  /** Of the anomaly, degrees a century: what the planets raise comes again one anomaly faster. */
  readonly meanMotion: number;
  readonly longitude: MoonCoordinate;
  readonly latitude: MoonCoordinate;
  readonly distance: MoonCoordinate;
}
