import type { MagneticModelName } from './magnetic-models.js';
import { variationUncertainty } from './variation-uncertainty.js';

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
}

// Source: the error model in section 3 of the WMM2025, WMM2020 and WMM2015 technical reports,
// in agreeing copies of them; that of the variation stands in variation-uncertainty.ts. The
// program NCEI gave out with the model of 2020 has 145 for f; the reports derive their
// figures, so they are followed.
const of2025: ErrorModel = { x: 137, y: 89, z: 141, h: 133, f: 138, inclination: 0.2 };
const of2020: ErrorModel = { x: 131, y: 94, z: 157, h: 128, f: 148, inclination: 0.21 };
const of2015: ErrorModel = { x: 138, y: 89, z: 165, h: 133, f: 152, inclination: 0.22 };

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
  const { x, y, z, h: ofH, f, inclination } = errorModels[model];
  const variation = variationUncertainty(model, h);
  return { x, y, z, h: ofH, f, variation, declination: variation, inclination };
}
