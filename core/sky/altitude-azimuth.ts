import { atan2Degrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { checkTriangle, horizonVector } from './triangle.js';
import type { Triangle } from './triangle.js';

/** Nearer to the zenith or nadir than this, as a pure number, a bearing is rounding alone (a hundred-millionth of a degree). */
const NO_BEARING = 1e-10;

export interface AltitudeAzimuth {
  /** True altitude of the centre, degrees [-90, 90]. */
  readonly altitude: number;
  /** True bearing, degrees [0, 360); null at a pole, or with the body in the zenith or nadir. */
  readonly azimuth: number | null;
}

/** As `altitudeAzimuth`, for arguments known to be good. */
export function solveTriangle(triangle: Triangle): AltitudeAzimuth {
  const { north, east, up } = horizonVector(triangle);
  const across = Math.hypot(north, east);
  const undetermined = across < NO_BEARING || Math.abs(triangle.latitude) === 90;
  return { altitude: atan2Degrees(up, across), azimuth: undetermined ? null : wrap360(atan2Degrees(east, north)) };
}

/**
 * Altitude and azimuth of a body from latitude, declination and local hour angle: no
 * refraction, no parallax. Throws `RangeError` naming a bad argument.
 * Source: Pub. 9, American Practical Navigator, the navigational triangle.
 */
export function altitudeAzimuth(triangle: Triangle): AltitudeAzimuth {
  checkTriangle(triangle);
  return solveTriangle(triangle);
}
