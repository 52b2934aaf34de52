import { wrap180 } from '../angle/wrap.js';
import { bodyInSky } from '../sky/body-in-sky.js';
import { kindOf } from '../sky/body.js';
import { isSkyInstant } from '../sky/check-sky-instant.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AmplitudeSight } from './amplitude-result.js';
import type { AmplitudeObservation } from './amplitude-observation.js';
import { errorCautions } from './error-cautions.js';
import { isFarFromMoment } from './far-from-moment.js';
import { lightCautions } from './light-cautions.js';
import { timeChange } from './time-change.js';

/** Near the horizon a time is still worth a word where it turns the bearing by more than this, degrees, and by more than twice the doubt. Common practice, no source. */
const MATTERS = 1;
/** Where a tenth of a degree of altitude moves the bearing this much, an amplitude is hardly a check. */
const STEEP_PER_TENTH = 0.3;
/** How near the horizon a body must stand by another clock or place to be taken for what was seen, degrees. */
const ZONE_MATCH = 0.35;
/** How near the bearing read must lie to the true one then, degrees: no error of a usable compass is larger. */
const ZONE_BEARING = 45;
/** Zones of the sea reach from 12 hours behind to 12 ahead, of the land to 14 ahead. */
const ZONES = Array.from({ length: 27 }, (_, index) => index - 12).filter(Boolean);
const HOUR = 3_600_000;

/** Whether the body stood at the altitude of the moment, where the compass pointed, at another place or time. */
function seenFrom(
  observation: AmplitudeObservation,
  altitude: number,
  other: Partial<Pick<AmplitudeObservation, 'latitude' | 'longitude' | 'instant'>>,
): boolean {
  const where = { ...observation, ...other };
  if (!isSkyInstant(where.instant)) return false;
  const seen = bodyInSky(where.body, where);
  return (
    seen.azimuth !== null &&
    Math.abs(seen.altitude - altitude) <= ZONE_MATCH &&
    Math.abs(wrap180(seen.azimuth - where.compassBearing)) <= ZONE_BEARING
  );
}

/** The zone whose clock explains the time given: by UTC that many hours earlier the body was seen so. Null where there is none. */
function zoneHours(observation: AmplitudeObservation, altitude: number): number | null {
  const fits = ZONES.filter((hours) => seenFrom(observation, altitude, { instant: new Date(observation.instant.getTime() - hours * HOUR) }));
  const last = fits.length - 1;
  const [behind = 0, ahead = 0] = [fits[0], fits[last]];
  // Clocks a whole day apart show one time, as 12 h behind and 12 h ahead: about the date line the ship's own side is meant.
  // Where the body creeps along the horizon many hours fit, and none explains anything.
  return last === (ahead - behind) / 24 ? (wrap180(observation.longitude) < 0 ? behind : ahead) : null;
}

/** What explains a body far from the horizon: another zone's clock, or a name of latitude or longitude turned; all that fit are told. */
function explanations(observation: AmplitudeObservation, found: Pick<AmplitudeSight, 'altitudeByTime' | 'altitude'>): Caution[] {
  const { latitude, longitude } = observation;
  const cautions: Caution[] = [];
  const hours = zoneHours(observation, found.altitude);
  if (hours !== null) {
    cautions.push(warning('time-by-hours', { hours: timeChange(-hours) }));
  }
  if (seenFrom(observation, found.altitude, { longitude: -longitude })) {
    cautions.push(warning('longitude-turned', { longitude: quantity(wrap180(-longitude), 'longitude') }));
  }
  if (seenFrom(observation, found.altitude, { latitude: -latitude })) {
    cautions.push(warning('latitude-turned', { latitude: quantity(-latitude, 'latitude') }));
  }
  return cautions;
}

/** How far the bearing of the body at the time given lies from that at the moment, degrees. */
function bearingByTime(observation: AmplitudeObservation, trueBearing: number): number {
  const { azimuth } = bodyInSky(observation.body, observation);
  return azimuth === null ? 0 : Math.abs(wrap180(azimuth - trueBearing));
}

/** A time that does not go with the moment: far from rising or setting, or near it where the bearing moves fast. */
function timeCautions(observation: AmplitudeObservation, found: Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>): Caution[] {
  if (!isFarFromMoment(found)) {
    const off = bearingByTime(observation, found.trueBearing);
    const values = { altitude: quantity(found.altitudeByTime, 'angle'), expected: quantity(found.altitude, 'angle'), effect: quantity(off, 'angle') };
    return off > Math.max(MATTERS, 2 * found.doubt.total) ? [warning('time-and-moment', values)] : [];
  }
  const explained = explanations(observation, found);
  if (explained.length > 0) return explained;
  return [warning('not-at-horizon', { altitude: quantity(found.altitudeByTime, 'angle'), expected: quantity(found.altitude, 'angle') })];
}

/** Everything odd about an amplitude, by code. */
export function amplitudeCautions(
  observation: AmplitudeObservation,
  found: Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>,
): Caution[] {
  const ofTime = timeCautions(observation, found);
  const ofRest = [
    ...lightCautions(observation.body, observation, 'on-horizon'),
    ...errorCautions({ ...found, compassBearing: observation.compassBearing }, found.deviationDoubt ?? found.doubt.total),
  ];
  const explained = ofTime.some(({ code }) => /-turned|-by-/.test(code));
  // Error, light and what the card says all come of the slip that explains the bearing: one cause, one warning.
  const cautions = [...ofTime, ...ofRest.filter(({ code }) => !explained || code.endsWith('-zone'))];
  if (found.perTenthOfAltitude > STEEP_PER_TENTH) {
    cautions.push(warning('steep-horizon', { effect: quantity(found.perTenthOfAltitude, 'angle') }));
  }
  if (observation.moment !== 'celestial' && kindOf(observation.body) === 'star') cautions.push(note('star-on-horizon'));
  return cautions;
}
