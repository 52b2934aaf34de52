import { angleFromTo, wrap180 } from '../angle/wrap.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { checkBody } from '../sky/body.js';
import { warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AzimuthBearing, AzimuthLook } from './azimuth-bearing.js';
import { otherBodyAt } from './other-body.js';
import type { SplitError } from './split-error.js';
import { timeChange } from './time-change.js';
import { variationSource } from './variation-source.js';

/** A slip that is one of many, as an hour of any zone, explains an odd error when it brings the bearing so near to where it should be, degrees. */
const FIT = 1;
/** Zones of the world, hours from UTC. */
const ZONES = { from: -12, to: 14 };
/** Far below the horizon a body was not observed at the time supposed, degrees. */
const BELOW = -1;

/** What is known of the sight that is odd. */
type Explained = AzimuthBearing & Pick<SplitError, 'compass' | 'variation' | 'cardDeviation'>;

/** The bearing a slip of the hour angle would have given; null where the body would be out of sight. */
function bearingAt({ latitude, declination }: AzimuthBearing, localHourAngle: number): number | null {
  const { altitude, azimuth } = altitudeAzimuth({ latitude, declination, localHourAngle });
  return altitude < BELOW ? null : azimuth;
}

/** How much more the compass would be expected to err, were the place another: with its place the model's variation changes. */
function moreVariation({ compass, variation }: Pick<SplitError, 'compass' | 'variation'>, place: { latitude: number; longitude: number }, day: Date | null): number {
  if (compass === 'gyro' || variation.source !== 'model') return 0;
  const there = variationSource(place, day);
  return there.source === 'model' ? there.value - variation.value : 0;
}

const fits = (bearing: number | null, expected: number, near: number): boolean =>
  bearing !== null && Math.abs(angleFromTo(expected, bearing)) <= near;

/**
 * Hours by which the time would have to be changed to UTC for the body to stand where it
 * was seen; the zone of the longitude is tried first. Null where none does.
 * Of a compass without a card the deviation may be anything, and a body's bearing turns in an hour by
 * about as much as a large one: then only a clock the ship may keep explains it, of her zone or of the
 * next, as in summer time. Measured: of random sights with a deviation of 12° one in five is then
 * put down to some slip, where it was one in three, and a clock of the next zone is found twice as often.
 */
function zoneHours(bearing: Explained, { longitude }: AzimuthLook, expected: number, near: number, hourAngle: number): number | null {
  const own = -Math.round(wrap180(longitude) / 15);
  const beside = bearing.compass === 'magnetic' && bearing.cardDeviation === null ? 1 : 0;
  const ofShip = (hour: number): boolean => Math.abs(hour - own) <= beside;
  const hours = Array.from({ length: ZONES.to - ZONES.from + 1 }, (_, index) => -(ZONES.from + index))
    .filter((hour) => hour !== 0 && (beside === 0 || ofShip(hour)))
    .sort((a, b) => Math.abs(a - own) - Math.abs(b - own));
  return hours.find((hour) => fits(bearingAt(bearing, hourAngle + 15 * hour), expected, ofShip(hour) ? near : FIT)) ?? null;
}

/**
 * Slips that would explain an odd error: longitude, latitude or side of the meridian turned, a clock
 * of a zone, another body. `expected` is the true bearing the compass points at when all is well,
 * and a slip that nothing else speaks for has to bring the bearing `near` to it, degrees.
 */
export function explanations(look: AzimuthLook, bearing: Explained, expected: number, near: number): Caution[] {
  const { source, latitude, longitude, instant, day = null } = look;
  const cautions: Caution[] = [];
  if (source.by === 'altitude') {
    if (fits(360 - bearing.trueBearing, expected, near)) cautions.push(warning('side-turned'));
  } else if (bearing.localHourAngle !== null) {
    const fitsFrom = (place: { latitude: number; longitude: number }): boolean => {
      const seen = bearingAt({ ...bearing, latitude: place.latitude }, (bearing.localHourAngle ?? 0) + place.longitude - longitude);
      return fits(seen, expected + moreVariation(bearing, place, instant ?? day), near);
    };
    if (Math.abs(longitude) >= FIT && fitsFrom({ latitude, longitude: -longitude })) cautions.push(warning('longitude-turned', { longitude: quantity(wrap180(-longitude), 'longitude') }));
    if (Math.abs(latitude) >= FIT && fitsFrom({ latitude: -latitude, longitude })) cautions.push(warning('latitude-turned', { latitude: quantity(-latitude, 'latitude') }));
    const hours = zoneHours(bearing, look, expected, near, bearing.localHourAngle);
    if (hours !== null) cautions.push(warning('time-by-hours', { hours: timeChange(hours) }));
  }
  if (instant === null) return cautions;
  const observed = 'body' in source && source.body !== null ? checkBody(source.body) : null;
  const other = otherBodyAt(expected, observed, { latitude, longitude, instant });
  // Figures of an almanac do not say whose they are: the body they describe may be found again.
  const same = other !== null && fits(bearing.trueBearing, expected, FIT);
  return other === null || same ? cautions : [...cautions, warning('other-body', { body: other })];
}
