import { EQUATORIAL_RADIUS, FLATTENING } from '../angle/ellipsoid.js';
import { arcOfDegrees, sinDegrees } from '../angle/trigonometry.js';

const n = FLATTENING / (2 - FLATTENING);

/**
 * Distance along the meridian from the equator, metres, north positive: Helmert's series in
 * the third flattening n (1880), to n⁴; what is left out is below a micrometre.
 */
export function meridianArc(latitude: number): number {
  const series =
    (1 + n ** 2 / 4 + n ** 4 / 64) * arcOfDegrees(latitude) -
    (3 / 2) * (n - n ** 3 / 8) * sinDegrees(2 * latitude) +
    (15 / 16) * (n ** 2 - n ** 4 / 4) * sinDegrees(4 * latitude) -
    (35 / 48) * n ** 3 * sinDegrees(6 * latitude) +
    (315 / 512) * n ** 4 * sinDegrees(8 * latitude);
  return (EQUATORIAL_RADIUS / (1 + n)) * series;
}
