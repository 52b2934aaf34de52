import { approximateFromExact } from '../../core/deviation/convert-coefficients.js';
import type { ApproximateCoefficients } from '../../core/deviation/approximate-deviation.js';
import { addCorrectors } from '../../core/iron/add-correctors.js';
import type { Corrector } from '../../core/iron/correctors.js';
import { largestParts } from '../../core/iron/deviation-parts.js';
import type { DeviationParts } from '../../core/iron/deviation-parts.js';
import type { EarthField } from '../../core/iron/earth-field.js';
import { exactCoefficients } from '../../core/iron/exact-coefficients.js';
import type { IronCoefficients } from '../../core/iron/exact-coefficients.js';
import { ironCautions } from '../../core/iron/iron-cautions.js';
import { ironCurve } from '../../core/iron/iron-curve.js';
import type { IronCurvePoint } from '../../core/iron/iron-curve.js';
import { ironDeviation } from '../../core/iron/iron-deviation.js';
import type { IronDeviation } from '../../core/iron/iron-deviation.js';
import type { IronParameters } from '../../core/iron/iron-parameters.js';
import { needle } from '../../core/iron/needle.js';
import type { Needle } from '../../core/iron/needle.js';
import type { Caution } from '../../core/working/caution.js';

/** A ship at a place, nT and degrees: what the bench asks core about. */
export interface BenchQuestion {
  readonly ship: IronParameters;
  readonly correctors: readonly Corrector[];
  readonly field: EarthField;
  readonly heading: number;
  readonly heel: number;
}

/** What her iron does there: plain data. */
export interface ShipAtPlace {
  readonly field: EarthField;
  /** Her iron with the correctors. */
  readonly iron: IronParameters;
  readonly heel: number;
  readonly exact: IronCoefficients;
  /** Degrees; null where the deviation is beyond their formulas. */
  readonly approximate: ApproximateCoefficients | null;
  /** Degrees, permanent and induced apart; null where there are none. */
  readonly largest: DeviationParts | null;
  readonly needle: Needle;
  readonly curve: readonly IronCurvePoint[];
}

export interface BenchResult extends ShipAtPlace {
  readonly heading: number;
  readonly onHeading: IronDeviation;
  /** The point of the curve with the largest deviation; null where there is none. */
  readonly worst: IronCurvePoint | null;
  readonly cautions: readonly Caution[];
}

/** Every 2½°: fine enough for a smooth line, and 15° is among them. */
const POINTS = 144;

export function approximateOf({ A, B, C, D, E }: IronCoefficients): ApproximateCoefficients | null {
  if (A === null || B === null || C === null || D === null || E === null) return null;
  return approximateFromExact({ A, B, C, D, E });
}

export function shipAtPlace(iron: IronParameters, field: EarthField, heel: number): ShipAtPlace {
  const exact = exactCoefficients(iron, field, heel);
  const found = needle(iron, field, heel);
  return {
    field: { h: field.h, z: field.z },
    iron,
    heel,
    exact,
    approximate: found.behaviour === 'directs' ? approximateOf(exact) : null,
    largest: largestParts(iron, field, heel),
    needle: found,
    curve: ironCurve(iron, field, heel, POINTS),
  };
}

export function worstOf(curve: readonly IronCurvePoint[]): IronCurvePoint | null {
  const size = (point: IronCurvePoint | null): number => Math.abs(point?.deviation ?? -1);
  return curve.reduce<IronCurvePoint | null>((worst, point) => (point.deviation !== null && size(point) > size(worst) ? point : worst), null);
}

export function benchResult({ ship, correctors, field, heading, heel }: BenchQuestion): BenchResult {
  const iron = addCorrectors(ship, correctors);
  const at = shipAtPlace(iron, field, heel);
  return {
    ...at,
    heading,
    onHeading: ironDeviation(iron, field, heading, heel),
    worst: worstOf(at.curve),
    cautions: ironCautions(iron, field, heel),
  };
}
