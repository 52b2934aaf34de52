import { tanDegrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { variationSource } from '../sight/variation-source.js';
import type { VariationSource } from '../sight/variation-source.js';
import type { Position } from '../sight/geodesic-line.js';
import { transitLine } from '../sight/transit-line.js';
import { isSkyInstant } from '../sky/check-sky-instant.js';
import { circleParallax, parallaxDoubt } from './circle-parallax.js';
import { sunBearing } from './sun-bearing.js';
import type { SwingRow } from './swing-row.js';
import { usualSigmas } from './swing-settings.js';
import type { SwingSettings } from './swing-settings.js';

/** Readings of one group share an error that is the same on every heading and not known. */
export type UnknownConstant = 'unknown-object' | 'gyro';

export type NoReadingReason =
  | 'no-variation'
  | 'no-place'
  | 'no-object'
  | 'no-transit'
  | 'transit-undetermined'
  | 'sun-below-horizon'
  | 'no-azimuth'
  | 'sun-too-high'
  | 'gyro-error-needed';

/** What one heading gave: a deviation, short of `constant` where that is not null; or why it gave none. */
export type RowReading =
  | {
      readonly ok: true;
      /** The head by compass where it was read; else by magnetic reckoning, from which the deviation is to be taken. */
      readonly head: { readonly value: number; readonly by: 'compass' | 'magnetic' };
      /** Degrees (-180, 180], east positive. */
      readonly deviation: number;
      readonly sigma: number;
      readonly constant: UnknownConstant | null;
      /** Bearing that was compared with the compass, degrees [0, 360), magnetic; null where none was. */
      readonly magneticBearing: number | null;
      /** Altitude of the Sun, degrees. */
      readonly altitude: number | null;
    }
  | { readonly ok: false; readonly reason: NoReadingReason };

/** A circle not level by so much turns a bearing by its tangent of altitude: one standard deviation, degrees; common practice, no source. */
const TILT = 0.3;
/** Seconds of doubt in a time. Common practice, no source. */
const TIME = 2;
/** The Sun this high has no bearing worth reading, degrees; common practice, no source. */
const TOO_HIGH = 80;

const refuse = (reason: NoReadingReason): RowReading => ({ ok: false, reason });

/** Where she is swung; failing that a mark of her transit, which is near enough for the variation. */
function placeFor({ place, transit }: SwingSettings): Position | undefined {
  if (place || !transit || transit.kind === 'charted') return place;
  return transit.kind === 'two-marks' ? transit.front : transit.mark;
}

export type SwingVariation = Exclude<VariationSource, { source: 'none' }>;

/** The variation for a row, and null where nothing tells it. */
export function variationFor(settings: SwingSettings, time?: Date): SwingVariation | null {
  const { variation, instant } = settings;
  const place = placeFor(settings);
  const when = instant ?? time ?? null;
  const found = variationSource(place ?? { latitude: 0, longitude: 0 }, place ? when : null, variation);
  return found.source === 'none' ? null : found;
}

interface Compared {
  readonly magneticBearing: number;
  readonly compassBearing: number;
  readonly sigma: number;
  readonly constant?: UnknownConstant | null;
  readonly altitude?: number | null;
}

/** The head as read, by compass or turned into magnetic; null where the gyro's error or the variation is wanting. */
function headOf(row: SwingRow, settings: SwingSettings, variation: number | null): { value: number; by: 'compass' | 'magnetic' } | null {
  const by = row.headingBy ?? 'compass';
  if (by !== 'gyro') return { value: wrap360(row.heading), by };
  const { gyroError } = settings;
  if (gyroError === undefined || gyroError === null || variation === null) return null;
  return { value: wrap360(row.heading + gyroError - variation), by: 'magnetic' };
}

function compared(head: { value: number; by: 'compass' | 'magnetic' }, what: Compared): RowReading {
  const { magneticBearing, compassBearing, sigma, constant = null, altitude = null } = what;
  return { ok: true, head, deviation: wrap180(magneticBearing - compassBearing), sigma, constant, magneticBearing: wrap360(magneticBearing), altitude };
}

/**
 * The bearing of a near object as the ship has it on her circle. The head by magnetic reckoning
 * needs the deviation this very bearing is to give: turns of one after the other settle both, for the parallax
 * moves less than the head.
 */
function withParallax(settings: SwingSettings, bearing: number, compassBearing: number, head: { value: number; by: 'compass' | 'magnetic' }): number {
  let parallax = 0;
  // The nearer the object, the more turns: some ten at half a mile, hundreds where it almost touches the circle.
  for (let turn = 0, moved = 1; turn < 400 && Math.abs(moved) > 1e-9; turn++) {
    const magnetic = head.by === 'magnetic' ? head.value : head.value + wrap180(bearing + parallax - compassBearing);
    moved = circleParallax(settings.circle, bearing, magnetic) - parallax;
    parallax += moved;
  }
  return bearing + parallax;
}

type Heads = { value: number; by: 'compass' | 'magnetic' };

function readSun(row: Extract<SwingRow, { method: 'sun' }>, settings: SwingSettings, head: Heads, variation: number | null, sigma: number): RowReading {
  const { place } = settings;
  if (!place) return refuse('no-place');
  if (variation === null) return refuse('no-variation');
  const sun = sunBearing(place, row.instant);
  if (!sun.ok) return refuse(sun.reason);
  if (sun.altitude > TOO_HIGH) return refuse('sun-too-high');
  const soon = new Date(row.instant.getTime() + TIME * 1000);
  const later = isSkyInstant(soon) ? sunBearing(place, soon) : sun;
  const drift = later.ok ? wrap180(later.azimuth - sun.azimuth) : 0;
  const own = row.sigma ?? Math.hypot(sigma, TILT * tanDegrees(Math.max(0, sun.altitude)), drift);
  return compared(head, { magneticBearing: sun.azimuth - variation, compassBearing: row.bearing, sigma: own, altitude: sun.altitude });
}

function readGyro(row: Extract<SwingRow, { method: 'gyro' }>, settings: SwingSettings, variation: number | null, sigma: number): RowReading {
  const by = row.headingBy ?? 'compass';
  const known = settings.gyroError !== undefined && settings.gyroError !== null;
  const compass = wrap360(by === 'compass' ? row.heading : row.reading);
  const reading = { ok: true as const, head: { value: compass, by: 'compass' as const }, sigma, magneticBearing: null, altitude: null };
  if (by === 'magnetic') return { ...reading, deviation: wrap180(row.heading - compass), constant: null };
  const gyro = by === 'compass' ? row.reading : row.heading;
  if (known && variation === null) return refuse('no-variation');
  // Of unknown error, gyro and compass differ by the deviation and a constant: variation and gyro error.
  const apart = known ? (settings.gyroError ?? 0) - (variation ?? 0) : 0 - (variation ?? 0);
  return { ...reading, deviation: wrap180(gyro + apart - compass), constant: known ? null : 'gyro' };
}

/** The magnetic bearing of the transit or the known object, or why there is none. */
function charted(row: SwingRow, settings: SwingSettings, variation: number | null): number | NoReadingReason {
  if (row.method === 'known-object') {
    const { object } = settings;
    if (!object) return 'no-object';
    if (object.by === 'magnetic') return object.bearing;
    return variation === null ? 'no-variation' : object.bearing - variation;
  }
  if (!settings.transit) return 'no-transit';
  if (settings.transit.kind === 'one-mark' && !settings.place) return 'no-place';
  if (variation === null) return 'no-variation';
  const found = transitLine(settings.transit, settings.place);
  return found.determined ? found.line.trueBearing - variation : 'transit-undetermined';
}

/**
 * Turns one row of a swing into a deviation by its method. `meanBearing` is the mean compass
 * bearing of the object of unknown bearing. Arguments have been checked.
 */
export function readRow(row: SwingRow, settings: SwingSettings, meanBearing: number | null): RowReading {
  const variation = variationFor(settings, row.method === 'sun' ? row.instant : undefined)?.value ?? null;
  const usual = settings.sigmas?.[row.method] ?? usualSigmas[row.method];
  const sigma = row.sigma ?? usual;
  if (row.method === 'gyro') return readGyro(row, settings, variation, sigma);
  const head = headOf(row, settings, variation);
  if (!head) return refuse(settings.gyroError === undefined || settings.gyroError === null ? 'gyro-error-needed' : 'no-variation');
  switch (row.method) {
    case 'deviation':
      return { ok: true, head, deviation: wrap180(row.deviation), sigma, constant: null, magneticBearing: null, altitude: null };
    case 'sun':
      return readSun(row, settings, head, variation, usual);
    case 'shore-compass': {
      // The ship's bearing from the shore turned round is the shore's from the ship: both ends of one line.
      const magneticBearing = row.shoreBearing + (settings.shoreError ?? 0) + 180;
      return compared(head, { magneticBearing, compassBearing: row.bearing, sigma });
    }
    case 'unknown-object': {
      const bearing = withParallax(settings, meanBearing ?? row.bearing, row.bearing, head);
      return compared(head, {
        magneticBearing: bearing,
        compassBearing: row.bearing,
        sigma: row.sigma ?? Math.hypot(sigma, parallaxDoubt(settings.circle)),
        constant: 'unknown-object',
      });
    }
    case 'known-object':
    case 'transit': {
      const bearing = charted(row, settings, variation);
      if (typeof bearing === 'string') return refuse(bearing);
      const near = row.method === 'known-object';
      return compared(head, {
        magneticBearing: near ? withParallax(settings, bearing, row.bearing, head) : bearing,
        compassBearing: row.bearing,
        sigma: row.sigma ?? Math.hypot(sigma, near ? parallaxDoubt(settings.circle) : 0),
      });
    }
  }
}
