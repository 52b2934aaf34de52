import { arcOfDegrees } from '../angle/trigonometry.js';
import { approximateDeviation, approximateSlope, checkCoefficients } from './approximate-deviation.js';
import type { DeviationCard } from './deviation-card.js';
import { tableCurve } from './deviation-table.js';
import type { PeriodicCurve } from './periodic-spline.js';

/** A card that goes by compass heading, as one does that was observed. */
export type CardByCompass = Exclude<DeviationCard, { readonly kind: 'exact' }>;

/** The deviation on every compass heading by a table or by approximate coefficients; throws as `deviationCurve`. */
export function curveByCompass(card: CardByCompass): PeriodicCurve {
  if (card.kind === 'table') return tableCurve(card.rows);
  const { kind, coefficients } = card;
  // Exact coefficients are a sixtieth of these: read as such they would pass for next to no deviation.
  if (kind !== 'approximate') throw new RangeError(`card.kind: ${String(kind)} is none`);
  checkCoefficients('card.coefficients', coefficients);
  return {
    value: (heading) => approximateDeviation(coefficients, heading),
    slope: (heading) => approximateSlope(coefficients, heading),
    // Both waves at their steepest at once.
    leastSlope: -arcOfDegrees(Math.hypot(coefficients.B, coefficients.C) + 2 * Math.hypot(coefficients.D, coefficients.E)),
  };
}
