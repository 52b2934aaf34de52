import { wrap180 } from '../angle/wrap.js';
import { kindOf } from '../sky/body.js';
import { horizonEvent } from '../sky/horizon-event.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AmplitudeObservation, AmplitudeSight } from './amplitude-sight.js';
import { errorCautions } from './error-cautions.js';

/** A body this far from the horizon by the clock was not observed on it, degrees of altitude. */
const FAR_FROM_HORIZON = 1;
/** Where a tenth of a degree of altitude moves the bearing this much, an amplitude is hardly a check. */
const STEEP_PER_TENTH = 0.3;
/** How near a clock must be to a whole zone, minutes. */
const ZONE_MATCH = 12;
const HOUR = 3_600_000;

/**
 * Whole hours by which the time given misses the event on the same day, where they explain
 * it: what the clock of a zone would show. Null where they do not.
 */
function zoneHours({ body, latitude, longitude, instant, moment, heightOfEye }: AmplitudeObservation, event: 'rising' | 'setting'): number | null {
  for (const after of [new Date(instant.getTime() - 14 * HOUR), new Date(instant.getTime())]) {
    let found;
    try {
      found = horizonEvent({ body, latitude, longitude, after, event, moment, heightOfEye });
    } catch {
      // Near the ends of the years known the search may leave them.
      continue;
    }
    if (!found.occurs) continue;
    const behind = (instant.getTime() - found.instant.getTime()) / HOUR;
    const hours = Math.round(behind);
    if (hours !== 0 && Math.abs(hours) <= 14 && Math.abs(behind - hours) * 60 <= ZONE_MATCH) return hours;
  }
  return null;
}

/** A time far from rising or setting: by a whole zone, or simply far. */
function timeCautions(observation: AmplitudeObservation, found: Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>): Caution[] {
  if (Math.abs(found.altitudeByTime - found.altitude) <= FAR_FROM_HORIZON) return [];
  const altitude = quantity(found.altitudeByTime, 'angle');
  // The side was told from the time, which is what is in doubt: the compass knows better.
  const eastern = wrap180(observation.compassBearing) > 0;
  const hours = zoneHours(observation, eastern ? 'rising' : 'setting');
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
