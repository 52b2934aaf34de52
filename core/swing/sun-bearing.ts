import { wrap180 } from '../angle/wrap.js';
import type { Position } from '../sight/geodesic-line.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { geographicalPosition } from '../sky/geographical-position.js';

type SunBearing =
  | { readonly ok: true; readonly azimuth: number; readonly altitude: number }
  | { readonly ok: false; readonly reason: 'sun-below-horizon' | 'no-azimuth' };

/** Lower than this, degrees, the Sun is not seen from any bridge: refraction and dip lift it by less. Common practice, no source. */
const NEVER_SEEN = -2;

/** True bearing and altitude of the Sun, degrees. Throws `RangeError` for an instant outside 1900 to 2100. */
export function sunBearing({ latitude, longitude }: Position, instant: Date): SunBearing {
  const { gha, declination } = geographicalPosition('Sun', instant);
  const { altitude, azimuth } = altitudeAzimuth({ latitude, declination, localHourAngle: wrap180(gha + longitude) });
  if (azimuth === null) return { ok: false, reason: 'no-azimuth' };
  return altitude < NEVER_SEEN ? { ok: false, reason: 'sun-below-horizon' } : { ok: true, azimuth, altitude };
}
