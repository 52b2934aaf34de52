import { roundTo } from '../angle/format-angle.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import type { CompassKind } from '../sight/compass-kind.js';
import { variationSource } from '../sight/variation-source.js';
import { formatInstant } from '../time/instant.js';
import type { Chance } from './chance.js';
import type { Given, Level } from './exercise.js';
import { given, givenWord } from './given.js';

export interface AnyPlace {
  readonly latitude: number;
  readonly longitude: number;
}

/** The years of the exercises, all within one magnetic model: 1 January 2026 and the minutes of three years. */
const FIRST_MINUTE = Date.UTC(2026, 0, 1) / 60_000;
const MINUTES = 3 * 365 * 1440;

/** A minute of 2026 to 2028. */
export function anyInstant(chance: Chance): Date {
  return new Date((FIRST_MINUTE + chance.below(MINUTES)) * 60_000);
}

/** A position to the tenth of a minute, within two latitudes of either name. */
export function anyPlace(chance: Chance, least: number, most: number): AnyPlace {
  return { latitude: chance.either(least, most, 600), longitude: wrap180(chance.between(-179, 180, 600)) };
}

/** The date and time of an instant as a work book has them: `2026-05-03 07:42:00`. */
export function dateAndTime(instant: Date): string {
  return formatInstant(instant).replace('T', ' ').replace('Z', '');
}

/** What was read from which compass, and what the chart says where the deviation is asked. */
export interface AnyReading {
  readonly compass: CompassKind;
  readonly compassBearing: number;
  readonly variation: number | null;
}

/** Largest deviation by level, degrees. */
const LARGEST_DEVIATION: Record<Level, number> = { 1: 4, 2: 6, 3: 9 };

/**
 * A compass that shows a body or mark on a true bearing, read to the half degree: at level 1
 * only its error is asked. Null where a magnetic compass is of no use at the place.
 */
export function anyReading(chance: Chance, level: Level, trueBearing: number, place: AnyPlace, instant: Date): AnyReading | null {
  const toHalf = (value: number): number => roundTo(value * 2, 0) / 2;
  if (chance.below(level === 1 ? 2 : 4) === 0) {
    const error = chance.either(1, 3, 2);
    return { compass: 'gyro', compassBearing: wrap360(toHalf(trueBearing - error)), variation: null };
  }
  const found = variationSource(place, instant);
  if (found.source === 'none' || found.zone !== 'normal') return null;
  const variation = toHalf(found.value);
  const error = variation + chance.either(1, LARGEST_DEVIATION[level], 2);
  return { compass: 'magnetic', compassBearing: wrap360(toHalf(trueBearing - error)), variation: level === 1 ? null : variation };
}

/** How the reading is told. */
export function givenReading({ compass, compassBearing, variation }: AnyReading): Given[] {
  const reading = [givenWord('compass', `compass.${compass}`), given(compass === 'gyro' ? 'gyroBearing' : 'compassBearing', compassBearing, 'bearing')];
  return variation === null ? reading : [...reading, given('variation', variation, 'error')];
}
