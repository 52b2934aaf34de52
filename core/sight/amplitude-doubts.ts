import { geographicalPosition } from '../sky/geographical-position.js';
import type { DoubtItem } from '../working/doubt.js';
import { quantity } from '../working/quantity.js';
import type { AmplitudeBearing } from './amplitude-result.js';
import type { AmplitudeObservation } from './amplitude-observation.js';
import { bearingOnHorizon } from './bearing-on-horizon.js';
import { effectOf } from './sight-doubts.js';
import type { SightDoubts } from './sight-doubts.js';

const SECONDS_PER_HOUR = 3600;

/** Where the body only just reaches the horizon, one standard deviation may turn it out of sight. */
const WHOLE_SIDE = 90;

/** How fast the declination changes, degrees per second of time. */
function declinationRate(observation: AmplitudeObservation, declination: number): number {
  const later = new Date(observation.instant.getTime() + SECONDS_PER_HOUR * 1000);
  try {
    return (geographicalPosition(observation.body, later).declination - declination) / SECONDS_PER_HOUR;
  } catch {
    // The last hour of the years known: no body's declination moves enough to matter.
    return 0;
  }
}

/** The causes of doubt of an amplitude and what each does to the error, degrees. */
export function amplitudeDoubts(observation: AmplitudeObservation, bearing: AmplitudeBearing, doubts: SightDoubts): DoubtItem[] {
  const { latitude } = observation;
  const { side, declination, altitude } = bearing;
  const effect = (change: number, of: (shift: number) => number | null): number => effectOf(change, of) ?? WHOLE_SIDE;
  const byTime = Math.abs(declinationRate(observation, declination)) * doubts.time;
  return [
    { code: 'reading', cause: quantity(doubts.reading, 'angle'), effect: doubts.reading },
    {
      code: 'horizonAltitude',
      cause: quantity(doubts.horizonAltitude, 'angle'),
      effect: effect(doubts.horizonAltitude, (shift) => bearingOnHorizon(side, latitude, declination, altitude + shift)),
    },
    {
      code: 'position',
      cause: quantity(doubts.position, 'nauticalMiles'),
      effect: effect(doubts.position / 60, (shift) => bearingOnHorizon(side, latitude + shift, declination, altitude)),
    },
    {
      code: 'time',
      cause: quantity(doubts.time, 'seconds'),
      effect: effect(byTime, (shift) => bearingOnHorizon(side, latitude, declination + shift, altitude)),
    },
  ];
}
