import type { MagneticModelName } from './magnetic-models.js';

interface VariationError {
  /** Degrees, and degrees × nT: one standard deviation is √(base² + (slope / h)²). */
  readonly base: number;
  readonly slope: number;
}

// Source: the error model in section 3 of the WMM2025, WMM2020 and WMM2015 technical reports,
// in agreeing copies of them. The program NCEI gave out with the model of 2015 has 0.24 and
// 5432; the reports derive their figures, so they are followed.
const of2015: VariationError = { base: 0.23, slope: 5430 };
const errors: Readonly<Record<MagneticModelName, VariationError>> = {
  WMM2025: { base: 0.26, slope: 5417 },
  WMM2020: { base: 0.26, slope: 5625 },
  WMM2015v2: of2015,
  WMM2015: of2015,
};

/**
 * How far the true variation, crust and daily disturbance included, may lie from that of a
 * model: one standard deviation in degrees, at most 180, where the horizontal field is `h`
 * nT; null where h is 0 and there is no variation to be uncertain of.
 */
export function variationUncertainty(model: MagneticModelName, h: number): number | null {
  const { base, slope } = errors[model];
  const ofField = slope / h;
  // Close to a dip pole the formula exceeds half a turn; the official program stops it there too.
  return h === 0 ? null : Math.min(180, Math.sqrt(base * base + ofField * ofField));
}
