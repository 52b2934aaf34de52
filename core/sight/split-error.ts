import { checkRange } from '../angle/check-number.js';
import { angleFromTo, wrap180 } from '../angle/wrap.js';
import type { Doubt } from '../working/doubt.js';
import type { CompassKind } from './compass-kind.js';
import { variationSource } from './variation-source.js';
import type { VariationSource } from './variation-source.js';

/** What a compass showed and what is known of it, degrees. */
export interface CompassReading {
  /** [0, 360). */
  readonly compassBearing: number;
  readonly compass: CompassKind;
  /** East positive; the model's where it is not given. */
  readonly variation?: number;
  /** What the deviation card says for the heading, east positive. */
  readonly cardDeviation?: number;
}

/** An error and what it consists of, degrees, east positive. */
export interface SplitError {
  readonly error: number;
  readonly compass: CompassKind;
  /** At the place; a part of the error only where the compass is magnetic. */
  readonly variation: VariationSource;
  readonly deviation: number | null;
  readonly cardDeviation: number | null;
  /** Deviation found less the card's. */
  readonly difference: number | null;
}

/** Throws `RangeError` naming what is not in order. */
export function checkReading({ compassBearing, compass, variation = 0, cardDeviation = 0 }: CompassReading): void {
  checkRange('compassBearing', compassBearing, 0, 360);
  if (compass !== 'magnetic' && compass !== 'gyro') throw new RangeError(`compass: ${String(compass)} is neither magnetic nor gyro`);
  checkRange('variation', variation, -180, 180);
  checkRange('cardDeviation', cardDeviation, -180, 180);
}

/** An error and its split with a variation at hand; a gyro has none. */
export function splitOf(
  error: number,
  variation: VariationSource,
  { compass, cardDeviation: byCard }: { readonly compass: CompassKind; readonly cardDeviation?: number | undefined },
): SplitError {
  const magnetic = compass === 'magnetic';
  const deviation = magnetic && variation.source !== 'none' ? wrap180(error - variation.value) : null;
  const cardDeviation = magnetic ? (byCard ?? null) : null;
  const difference = deviation !== null && cardDeviation !== null ? wrap180(deviation - cardDeviation) : null;
  return { error, compass, variation, deviation, cardDeviation, difference };
}

/** The same for a reading against a true bearing. */
export function splitWith(variation: VariationSource, trueBearing: number, reading: CompassReading): SplitError {
  return splitOf(angleFromTo(reading.compassBearing, trueBearing), variation, reading);
}

/** The same at a place and instant, whose variation is looked up. */
export function splitError(
  trueBearing: number,
  reading: CompassReading,
  place: { readonly latitude: number; readonly longitude: number; readonly instant: Date | null },
): SplitError {
  return splitWith(variationSource(place, place.instant, reading.variation), trueBearing, reading);
}

/** One standard deviation of the deviation found, degrees: the doubt of the error and that of the variation; null where there is none. */
export function deviationDoubtOf({ deviation, variation }: Pick<SplitError, 'deviation' | 'variation'>, { total }: Doubt): number | null {
  return deviation === null || variation.source === 'none' ? null : Math.hypot(total, variation.sigma);
}
