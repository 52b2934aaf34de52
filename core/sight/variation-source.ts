import { checkFinite } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import { magneticModelYears } from '../field/magnetic-models.js';
import { modelVariation } from '../field/model-variation.js';
import type { ModelVariation } from '../field/model-variation.js';
import type { CompassZone } from '../field/zone.js';
import { decimalYear } from '../time/decimal-year.js';

/** Where a variation came from, its value and one standard deviation, degrees, east positive. */
export type VariationSource =
  /** `modelled`: what the model says beside it, where it says anything. */
  | { readonly source: 'given'; readonly value: number; readonly sigma: number; readonly zone: CompassZone | null; readonly modelled?: number }
  | { readonly source: 'model'; readonly model: string; readonly value: number; readonly sigma: number; readonly zone: CompassZone }
  | { readonly source: 'none'; readonly reason: 'outside-models' | 'no-horizontal-field' | 'no-date' };

/**
 * Doubt of a variation taken from a chart: a rose is read to the quarter degree and its
 * annual change has been added up for years. Common practice, no source.
 */
const GIVEN_SIGMA = 0.25;

/** Where the horizontal force is weak the field wanders by degrees in a day, and no chart is better than the model there. */
function givenSigma(field: ModelVariation | null): number {
  return field && field.zone !== 'normal' ? Math.max(GIVEN_SIGMA, field.sigma ?? 180) : GIVEN_SIGMA;
}

/**
 * The variation to use at a place and instant: the one given, or that of the World Magnetic
 * Model. Unless one is given there is none outside the models' years, nor without an instant.
 * Degrees, latitude in [-90, 90], longitude any finite number, east positive. Throws
 * `RangeError` naming `latitude`, `longitude`, `instant` or `given`.
 */
export function variationSource(
  { latitude, longitude }: { readonly latitude: number; readonly longitude: number },
  instant: Date | null,
  given?: number,
): VariationSource {
  checkFinite('longitude', longitude);
  const year = instant && decimalYear(instant);
  const inModels = year !== null && year >= magneticModelYears.from && year <= magneticModelYears.until;
  const field = instant && inModels ? modelVariation({ latitude, longitude: wrap180(longitude) }, instant) : null;
  if (given !== undefined) {
    checkFinite('given', given);
    const beside = typeof field?.variation === 'number' ? { modelled: field.variation } : {};
    return { source: 'given', value: given, sigma: givenSigma(field), zone: field?.zone ?? null, ...beside };
  }
  if (!field) return { source: 'none', reason: instant ? 'outside-models' : 'no-date' };
  // Straight over a dip pole the needle has no direction to take.
  if (field.variation === null || field.sigma === null) return { source: 'none', reason: 'no-horizontal-field' };
  return { source: 'model', model: field.model, value: field.variation, sigma: field.sigma, zone: field.zone };
}
