import { altitudeAzimuth } from './altitude-azimuth.js';
import type { AltitudeAzimuth } from './altitude-azimuth.js';
import type { BodyName } from './body.js';
import { geographicalPosition } from './geographical-position.js';

/**
 * Where a body stands over a place (degrees, north and east positive) at an instant: geocentric, no
 * refraction, no parallax. Throws `RangeError` naming a bad argument.
 */
export function bodyInSky(body: BodyName, { latitude, longitude, instant }: { readonly latitude: number; readonly longitude: number; readonly instant: Date }): AltitudeAzimuth {
  const { gha, declination } = geographicalPosition(body, instant);
  return altitudeAzimuth({ latitude, declination, localHourAngle: gha + longitude });
}
