import { wrap180 } from '../angle/wrap.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { kindOf } from '../sky/body.js';
import { isSkyInstant } from '../sky/check-sky-instant.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AmplitudeObservation, AmplitudeSight } from './amplitude-sight.js';
import { errorCautions } from './error-cautions.js';

/** A body this far from the horizon by the clock was not observed on it, degrees of altitude. */
const FAR_FROM_HORIZON = 1;
/** Where a tenth of a degree of altitude moves the bearing this much, an amplitude is hardly a check. */
const STEEP_PER_TENTH = 0.3;
/** How near the horizon a body must stand by another zone's clock to be taken for what was seen, degrees. */
const ZONE_MATCH = 0.35;
/** How near the bearing read must lie to the true one then, degrees: no error of a usable compass is larger. */
const ZONE_BEARING = 45;
/** Zones of the sea reach from 12 hours behind to 12 ahead, of the land to 14 ahead. */
const ZONES = [...Array.from({ length: 12 }, (_, index) => index - 12), ...Array.from({ length: 14 }, (_, index) => index + 1)];
const HOUR = 3_600_000;

/**
 * The zone whose clock explains the time given: by UTC that many hours earlier the body
 * stood on the horizon where the compass pointed. Null where there is none.
 */
function zoneHours({ body, latitude, longitude, instant, compassBearing }: AmplitudeObservation, altitude: number): number | null {
  const fits = ZONES.filter((hours) => {
    const then = new Date(instant.getTime() - hours * HOUR);
    if (!isSkyInstant(then)) return false;
    const { gha, declination } = geographicalPosition(body, then);
    const seen = altitudeAzimuth({ latitude, declination, localHourAngle: gha + longitude });
    return (
      seen.azimuth !== null &&
      Math.abs(seen.altitude - altitude) <= ZONE_MATCH &&
      Math.abs(wrap180(seen.azimuth - compassBearing)) <= ZONE_BEARING
    );
  });
  // Where the body creeps along the horizon many hours fit, and none explains anything.
  return fits.length === 1 ? (fits[0] ?? null) : null;
}

/** A time far from rising or setting: by a whole zone, or simply far. */
function timeCautions(observation: AmplitudeObservation, found: Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>): Caution[] {
  if (Math.abs(found.altitudeByTime - found.altitude) <= FAR_FROM_HORIZON) return [];
  const altitude = quantity(found.altitudeByTime, 'angle');
  const hours = zoneHours(observation, found.altitude);
  return hours === null
    ? [warning('not-at-horizon', { altitude, expected: quantity(found.altitude, 'angle') })]
    : [warning('zone-time', { altitude, hours: `${hours > 0 ? '+' : '−'}${Math.abs(hours)}` })];
}

/** Everything odd about an amplitude, by code. */
export function amplitudeCautions(
  observation: AmplitudeObservation,
  found: Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>,
): Caution[] {
  const cautions = [
    ...timeCautions(observation, found),
    ...errorCautions({ ...found, compassBearing: observation.compassBearing }, found.deviationDoubt ?? found.doubt.total),
  ];
  if (found.perTenthOfAltitude > STEEP_PER_TENTH) {
    cautions.push(warning('steep-horizon', { effect: quantity(found.perTenthOfAltitude, 'angle') }));
  }
  if (observation.moment !== 'celestial' && kindOf(observation.body) === 'star') cautions.push(note('star-on-horizon'));
  return cautions;
}
