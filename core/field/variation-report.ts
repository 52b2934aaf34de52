import { decimalYear } from '../time/decimal-year.js';
import type { Caution } from '../working/caution.js';
import { chartedVariation } from './charted-variation.js';
import type { ChartRose } from './charted-variation.js';
import type { FieldPlace } from './check-place.js';
import { checkPlace } from './check-place.js';
import { magneticField } from './magnetic-field.js';
import type { MagneticField, MagneticFieldOptions } from './magnetic-field.js';
import { modelAgainstRose } from './model-against-rose.js';
import type { ModelAgainstRose } from './model-against-rose.js';
import { outsideModels } from './outside-models.js';
import type { OutsideModels } from './outside-models.js';
import { differenceCautions, placeCautions, roseCautions } from './variation-cautions.js';

/** What model and chart say of the field at a place and instant. */
export interface VariationReport {
  /** Null outside the years of the models. */
  readonly field: MagneticField | null;
  /** The years and the nearest of them, where `field` is null. */
  readonly outside: OutsideModels | null;
  /** Null without a rose; outside the models' years only `charted` and `years` hold a value. */
  readonly rose: ModelAgainstRose | null;
  readonly cautions: readonly Caution[];
}

export interface VariationRequest {
  readonly place: FieldPlace;
  readonly instant: Date;
  readonly rose?: ChartRose;
}

function chartAlone(rose: ChartRose, instant: Date): ModelAgainstRose {
  return {
    charted: chartedVariation(rose, instant),
    modelled: null,
    uncertainty: null,
    difference: null,
    years: decimalYear(instant) - rose.year,
  };
}

/**
 * The field by the model beside the rose of the chart, where there is one, and what to
 * make of both. A rose is brought up to date for any instant; a model holds for its years
 * only, and outside them the nearest year is told.
 * Throws `RangeError` naming the bad part of the place, of the rose, `instant` or `model`.
 */
export function variationReport({ place, instant, rose }: VariationRequest, options: MagneticFieldOptions = {}): VariationReport {
  const outside = outsideModels(instant, options.model);
  checkPlace(place.latitude, place.longitude, place.heightKm ?? 0);
  const field = outside ? null : magneticField(place, instant, options);
  const compared = !rose ? null : outside ? chartAlone(rose, instant) : modelAgainstRose(rose, place, instant, options);
  const ofDifference = compared ? differenceCautions(compared) : [];
  const ofRose = rose && compared ? roseCautions(rose, compared.years, compared.charted) : [];
  // The age told with the difference is not told again.
  const ageTold = ofDifference.some(({ code }) => code === 'rose-outdated');
  return {
    field,
    outside,
    rose: compared,
    cautions: [...(field ? placeCautions(place, field) : []), ...ofDifference, ...ofRose.filter(({ code }) => !ageTold || code !== 'rose-old')],
  };
}
