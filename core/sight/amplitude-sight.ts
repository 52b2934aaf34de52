import { checkRange } from '../angle/check-number.js';
import { cosDegrees, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { amplitude } from '../sky/amplitude.js';
import type { BodyName } from '../sky/body.js';
import { dip } from '../sky/dip.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { horizonAltitude } from '../sky/horizon-altitude.js';
import type { HorizonMoment } from '../sky/horizon-altitude.js';
import { combineDoubt } from '../working/doubt.js';
import type { Doubt } from '../working/doubt.js';
import type { Caution } from '../working/caution.js';
import type { Step } from '../working/step.js';
import { centreHeight } from './centre-height.js';
import { amplitudeCautions } from './amplitude-cautions.js';
import { amplitudeDoubts } from './amplitude-doubts.js';
import { amplitudeSteps, handSteps } from './amplitude-steps.js';
import { effectOf, usualDoubts } from './sight-doubts.js';
import type { SightDoubts } from './sight-doubts.js';
import { checkReading, splitError } from './split-error.js';
import type { SplitError } from './split-error.js';

export type CompassKind = 'magnetic' | 'gyro';
export type HorizonSide = 'rising' | 'setting';

export interface AmplitudeObservation {
  readonly body: BodyName;
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
  readonly instant: Date;
  readonly moment: HorizonMoment;
  /** Metres; counts for the moments on the visible horizon. */
  readonly heightOfEye: number;
  /** Degrees [0, 360). */
  readonly compassBearing: number;
  readonly compass: CompassKind;
  /** Degrees, east positive; the model's where it is not given. */
  readonly variation?: number;
  /** What the deviation card says for the heading, degrees, east positive. */
  readonly cardDeviation?: number;
  readonly doubts?: Partial<SightDoubts>;
}

/** Where the body is on the horizon, before any compass is looked at. */
export interface AmplitudeBearing {
  readonly determined: true;
  readonly side: HorizonSide;
  readonly latitude: number;
  readonly declination: number;
  /** True geocentric altitude of the centre at the moment, degrees. */
  readonly altitude: number;
  /** Apparent height of the centre above the visible horizon, in diameters of the body (a star or planet: of the Sun). */
  readonly centreHeight: number;
  /** Parts of that altitude in minutes of arc. */
  readonly dip: number;
  readonly refraction: number;
  readonly semidiameter: number;
  readonly parallax: number;
  /** At the moment seen, and with the centre on the celestial horizon where it reaches it; degrees, north positive. */
  readonly amplitude: number;
  readonly celestialAmplitude: number | null;
  readonly trueBearing: number;
  /** How far the bearing moves for one tenth of a degree of altitude, degrees, never negative. */
  readonly perTenthOfAltitude: number;
  /** How far it moves while the body climbs or sinks for one minute, degrees, never negative. */
  readonly perMinute: number;
  /** True altitude of the centre by the time given: far from `altitude` when the time is wrong. */
  readonly altitudeByTime: number;
}

export type NoAmplitude = { readonly determined: false; readonly reason: 'pole' | 'stays above' | 'stays below' };

export interface AmplitudeSight extends AmplitudeBearing, SplitError {
  readonly deviationDoubt: number | null;
  readonly doubt: Doubt;
  readonly steps: readonly Step[];
  readonly handSteps: readonly Step[];
  readonly cautions: readonly Caution[];
}

/** The bearing of a body on the horizon on one side of the meridian; null where it does not reach that altitude. */
function bearingOn(side: HorizonSide, latitude: number, declination: number, altitude: number): number | null {
  if (Math.abs(latitude) > 90 || Math.abs(declination) > 90) return null;
  return amplitude({ latitude, declination, altitude })?.[side] ?? null;
}

/**
 * True bearing of a body at rising or setting; the side of the meridian it stands on at
 * the time tells which. Throws `RangeError` naming a bad argument.
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
  const perTenthOfAltitude = effectOf(0.1, (shift) => bearingOn(side, latitude, declination, altitude + shift), turn) ?? 180;
  return {
    determined: true,
    side,
    latitude,
    declination,
    altitude,
    centreHeight: centreHeight(moment, { dip: dip(heightOfEye), ...place }),
    dip: parts.dip,
    refraction: parts.refraction,
    semidiameter: parts.semidiameter,
    parallax: parts.parallax,
    amplitude: reached.amplitude,
    celestialAmplitude: amplitude({ latitude, declination })?.amplitude ?? null,
    trueBearing,
    perTenthOfAltitude,
    perMinute: Math.abs(bearingPerMinute(latitude, altitude, trueBearing)),
    altitudeByTime: byTime.altitude,
  };
}

/** A body's hour angle grows by a quarter of a degree a minute. */
const HOUR_ANGLE_PER_MINUTE = 0.25;

/** dZ/dt = (sin L − cos L tan h cos Z) × the rate of the hour angle, the declination at rest; our own working. */
function bearingPerMinute(latitude: number, altitude: number, bearing: number): number {
  return (sinDegrees(latitude) - cosDegrees(latitude) * tanDegrees(altitude) * cosDegrees(bearing)) * HOUR_ANGLE_PER_MINUTE;
}

const turn = (from: number, to: number): number => wrap180(to - from);

/** The whole sight: true bearing, error, its split, how far to trust it, and the working. */
export function amplitudeSight(observation: AmplitudeObservation): AmplitudeSight | NoAmplitude {
  checkReading(observation);
  const bearing = amplitudeBearing(observation);
  if (!bearing.determined) return bearing;
  const doubts = { ...usualDoubts, ...observation.doubts };
  const split = splitError(bearing.trueBearing, observation, observation);
  const doubt = combineDoubt(amplitudeDoubts(observation, bearing, doubts));
  const { deviation, variation } = split;
  const deviationDoubt = deviation === null || variation.source === 'none' ? null : Math.hypot(doubt.total, variation.sigma);
  const found = { ...bearing, ...split, deviationDoubt, doubt };
  return {
    ...found,
    steps: amplitudeSteps(observation, found),
    handSteps: handSteps(observation, found),
    cautions: amplitudeCautions(observation, found),
  };
}
