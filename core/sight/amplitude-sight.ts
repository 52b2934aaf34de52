import { checkRange } from '../angle/check-number.js';
import { cosDegrees, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { amplitude } from '../sky/amplitude.js';
import { dip } from '../sky/dip.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { horizonAltitude } from '../sky/horizon-altitude.js';
import { MEAN_SUN_RATE } from '../sky/hour-angle-rates.js';
import { combineDoubt } from '../working/doubt.js';
import type { AmplitudeObservation } from './amplitude-observation.js';
import type { AmplitudeBearing, AmplitudeSight, HorizonSide, NoAmplitude } from './amplitude-result.js';
import { bearingOnHorizon } from './bearing-on-horizon.js';
import { centreHeight } from './centre-height.js';
import { amplitudeCautions } from './amplitude-cautions.js';
import { amplitudeDoubts } from './amplitude-doubts.js';
import { amplitudeSteps, handSteps } from './amplitude-steps.js';
import { effectOf, usualDoubts, usualHorizonDoubt } from './sight-doubts.js';
import { checkReading, deviationDoubtOf, splitError } from './split-error.js';

/**
 * True bearing of a body at rising or setting; the side of the meridian it stands on at
 * the time tells which. Latitude in [-90, 90], longitude in [-360, 360], degrees, north and east
 * positive; height of eye in metres, 0 to 1000. Throws `RangeError` naming a bad argument, `instant`
 * outside 1900-01-01 to 2100-01-01 among them.
 * Source: Pub. 9, American Practical Navigator, ch. 17; the altitudes of `horizonAltitude`.
 */
export function amplitudeBearing(
  observation: Pick<AmplitudeObservation, 'body' | 'latitude' | 'longitude' | 'instant' | 'moment' | 'heightOfEye'>,
): AmplitudeBearing | NoAmplitude {
  const { body, latitude, longitude, instant, moment, heightOfEye } = observation;
  checkRange('latitude', latitude, -90, 90);
  checkRange('longitude', longitude, -360, 360);
  const place = geographicalPosition(body, instant);
  const { declination } = place;
  const localHourAngle = wrap360(place.gha + longitude);
  const parts = horizonAltitude(moment, { heightOfEye, ...place });
  const { altitude } = parts;
  const byTime = altitudeAzimuth({ latitude, declination, localHourAngle });
  if (Math.abs(latitude) === 90) return { determined: false, reason: 'pole' };
  const reached = amplitude({ latitude, declination, altitude });
  if (!reached) {
    // At upper culmination the altitude is 90° less the distance between latitude and declination.
    return { determined: false, reason: 90 - Math.abs(latitude - declination) < altitude ? 'stays below' : 'stays above' };
  }
  const side: HorizonSide = localHourAngle > 180 ? 'rising' : 'setting';
  const trueBearing = reached[side];
  const perTenthOfAltitude = effectOf(0.1, (shift) => bearingOnHorizon(side, latitude, declination, altitude + shift)) ?? 180;
  return {
    determined: true,
    side,
    latitude,
    declination,
    ...parts,
    centreHeight: centreHeight(moment, { dip: dip(heightOfEye), ...place }),
    amplitude: reached.amplitude,
    celestialAmplitude: amplitude({ latitude, declination })?.amplitude ?? null,
    trueBearing,
    perTenthOfAltitude,
    perMinute: Math.abs(bearingPerMinute(latitude, altitude, trueBearing)),
    altitudeByTime: byTime.altitude,
  };
}

/** dZ/dt = (sin L − cos L tan h cos Z) × the rate of the hour angle, the declination at rest; our own working. */
function bearingPerMinute(latitude: number, altitude: number, bearing: number): number {
  return (sinDegrees(latitude) - cosDegrees(latitude) * tanDegrees(altitude) * cosDegrees(bearing)) * MEAN_SUN_RATE;
}

/**
 * The whole sight: true bearing, error, its split, how far to trust it, and the working.
 * Throws `RangeError` as `amplitudeBearing`, and naming a reading that is out of range.
 */
export function amplitudeSight(observation: AmplitudeObservation): AmplitudeSight | NoAmplitude {
  checkReading(observation);
  const bearing = amplitudeBearing(observation);
  if (!bearing.determined) return bearing;
  const doubts = { ...usualDoubts, horizonAltitude: usualHorizonDoubt(observation.latitude), ...observation.doubts };
  const split = splitError(bearing.trueBearing, observation, observation);
  const doubt = combineDoubt(amplitudeDoubts(observation, bearing, doubts));
  const found = { ...bearing, ...split, deviationDoubt: deviationDoubtOf(split, doubt), doubt };
  return {
    ...found,
    steps: amplitudeSteps(observation, found),
    handSteps: handSteps(observation, found),
    cautions: amplitudeCautions(observation, found),
  };
}
