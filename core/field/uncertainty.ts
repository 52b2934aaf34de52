import type { MagneticModelName } from './magnetic-models.js';

/** One standard deviation of each element: nT, degrees. */
export interface FieldUncertainty {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly h: number;
  readonly f: number;
  /** At most 180; null where h is 0 and there is no variation to be uncertain of. */
  readonly variation: number | null;
  readonly declination: number | null;
  readonly inclination: number;
}

interface ErrorModel {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly h: number;
  readonly f: number;
  readonly inclination: number;
  /** Degrees, and degrees × nT: that of the variation is √(base² + (slope / h)²). */
  readonly variationBase: number;
  readonly variationSlope: number;
}

// Source: the error model in section 3 of the WMM2025, WMM2020 and WMM2015 technical reports,
// in agreeing copies of them. The programs NCEI gave out with the models differ in
// a few places: 145 for f in 2020, and 0.24 and 5432 for the variation in 2015. The reports
// derive their figures, so they are followed.
const of2025: ErrorModel = {
  x: 137, y: 89, z: 141, h: 133, f: 138, inclination: 0.2, variationBase: 0.26, variationSlope: 5417,
};
const of2020: ErrorModel = {
  x: 131, y: 94, z: 157, h: 128, f: 148, inclination: 0.21, variationBase: 0.26, variationSlope: 5625,
};
const of2015: ErrorModel = {
  x: 138, y: 89, z: 165, h: 133, f: 152, inclination: 0.22, variationBase: 0.23, variationSlope: 5430,
};

const errorModels: Readonly<Record<MagneticModelName, ErrorModel>> = {
  WMM2025: of2025,
  WMM2020: of2020,
  WMM2015v2: of2015,
  WMM2015: of2015,
};

/**
 * How far the true field, crust and daily disturbance included, may lie from a model:
 * one standard deviation, where the horizontal field is `h` nT.
 */
export function fieldUncertainty(model: MagneticModelName, h: number): FieldUncertainty {
  const { x, y, z, h: ofH, f, inclination, variationBase, variationSlope } = errorModels[model];
  const slope = variationSlope / h;
  // Close to a dip pole the formula exceeds half a turn; the official program stops it there too.
  const variation = h === 0 ? null : Math.min(180, Math.sqrt(variationBase * variationBase + slope * slope));
  return { x, y, z, h: ofH, f, variation, declination: variation, inclination };
}
