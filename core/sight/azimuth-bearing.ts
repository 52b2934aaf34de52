import { checkRange } from '../angle/check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { azimuthByAltitude } from '../sky/azimuth-by-altitude.js';
import { horizonRates } from '../sky/horizon-rates.js';
import { altitudePlace } from './altitude-source.js';
import type { AltitudeCorrections, AltitudeSource } from './altitude-source.js';
import { skyPlace } from './azimuth-source.js';
import type { AzimuthSource, TimedSource } from './azimuth-source.js';

/** What was looked at, from where and when. */
export interface AzimuthLook {
  readonly source: AzimuthSource;
  /** Degrees [-90, 90], north positive. */
  readonly latitude: number;
  /** Degrees [-360, 360], east positive. */
  readonly longitude: number;
  /** May be null where the source has no need of it: figures typed from an almanac. */
  readonly instant: Date | null;
  /** Without an instant, a day: the variation and nothing else is taken from it. */
  readonly day?: Date | null;
}

/** Where a body stands, before any compass is looked at; degrees. */
export interface AzimuthBearing {
  readonly determined: true;
  readonly by: AzimuthSource['by'];
  readonly latitude: number;
  readonly declination: number;
  /** Greenwich hour angle [0, 360); null by altitude. */
  readonly gha: number | null;
  /** [0, 360); by altitude the one that follows, null for a body at the celestial pole. */
  readonly localHourAngle: number | null;
  /** True geocentric altitude of the centre. */
  readonly altitude: number;
  readonly trueBearing: number;
  /** How fast the bearing moves, degrees per minute, clockwise positive. */
  readonly azimuthRate: number;
  readonly horizontalParallax: number;
  readonly semidiameter: number;
  /** From the altitude observed to the true one, where one was observed. */
  readonly corrections: AltitudeCorrections | null;
}

/**
 * Why there is no bearing: at a pole every direction is the same; in the zenith or nadir
 * there is none; a body may never stand at the altitude given.
 */
export interface NoAzimuth {
  readonly determined: false;
  readonly reason: 'pole' | 'zenith' | 'nadir' | 'never-so-high' | 'never-so-low';
  readonly declination: number;
  readonly altitude: number;
}

function byTime(source: TimedSource, { latitude, longitude, instant }: AzimuthLook): AzimuthBearing | NoAzimuth {
  const { gha, declination, horizontalParallax, semidiameter, ...motion } = skyPlace(source, instant);
  const localHourAngle = wrap360(gha + longitude);
  const triangle = { latitude, declination, localHourAngle };
  const { altitude, azimuth } = altitudeAzimuth(triangle);
  const rate = horizonRates(triangle, motion).azimuth;
  if (azimuth === null || rate === null) {
    const reason = Math.abs(latitude) === 90 ? 'pole' : altitude > 0 ? 'zenith' : 'nadir';
    return { determined: false, reason, declination, altitude };
  }
  const place = { latitude, declination, gha, localHourAngle, altitude, trueBearing: azimuth, azimuthRate: rate };
  return { determined: true, by: source.by, ...place, horizontalParallax, semidiameter, corrections: null };
}

/** The hour angle of a body from its altitude and bearing; null at the celestial pole. The triangle read backwards. */
function hourAngleOf(latitude: number, declination: number, altitude: number, bearing: number): number | null {
  if (Math.abs(declination) === 90) return null;
  const across = -sinDegrees(bearing) * cosDegrees(altitude);
  const along = sinDegrees(altitude) * cosDegrees(latitude) - cosDegrees(altitude) * cosDegrees(bearing) * sinDegrees(latitude);
  return wrap360(atan2Degrees(across, along));
}

function byAltitude(source: AltitudeSource, { latitude, instant }: AzimuthLook): AzimuthBearing | NoAzimuth {
  const { declination, altitude, corrections } = altitudePlace(source, instant);
  const nowhere = (reason: NoAzimuth['reason']): NoAzimuth => ({ determined: false, reason, declination, altitude });
  if (Math.abs(latitude) === 90) return nowhere('pole');
  const bearings = azimuthByAltitude({ latitude, declination, altitude });
  if (!bearings) {
    if (Math.abs(altitude) === 90) return nowhere(altitude > 0 ? 'zenith' : 'nadir');
    // At upper culmination the altitude is 90° less the distance between latitude and declination.
    return nowhere(altitude > 90 - Math.abs(latitude - declination) ? 'never-so-high' : 'never-so-low');
  }
  const trueBearing = source.side === 'east' ? bearings.rising : bearings.setting;
  const localHourAngle = hourAngleOf(latitude, declination, altitude, trueBearing);
  const rate = localHourAngle === null ? 0 : horizonRates({ latitude, declination, localHourAngle }).azimuth;
  const place = { latitude, declination, gha: null, localHourAngle, altitude, trueBearing, azimuthRate: rate ?? 0 };
  return { determined: true, by: 'altitude', ...place, horizontalParallax: 0, semidiameter: 0, corrections };
}

/**
 * True bearing of a body at any instant: by the ephemeris, by figures of an almanac, or by
 * its altitude. Throws `RangeError` naming a bad argument.
 * Source: Pub. 9, American Practical Navigator, the navigational triangle.
 */
export function azimuthBearing(look: AzimuthLook): AzimuthBearing | NoAzimuth {
  checkRange('latitude', look.latitude, -90, 90);
  checkRange('longitude', look.longitude, -360, 360);
  return look.source.by === 'altitude' ? byAltitude(look.source, look) : byTime(look.source, look);
}
