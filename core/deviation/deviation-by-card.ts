import { checkFinite } from '../angle/check-number.js';
import { curveByCompass } from './curve-by-compass.js';
import type { DeviationCard } from './deviation-card.js';
import { checkExact, exactDeviationByCompass } from './exact-deviation.js';

/**
 * Deviation in degrees, east positive, by a card on a compass heading (any finite degrees);
 * null where an exact card has none or two for it. As `deviationCurve(card).at`, without the
 * way back from magnetic, which costs far more to prepare.
 * Throws `RangeError` as `deviationCurve`, and naming a heading that is not finite.
 */
export function deviationByCard(card: DeviationCard, compassHeading: number): number | null {
  if (card.kind === 'exact') {
    checkExact('card.coefficients', card.coefficients);
    return exactDeviationByCompass(card.coefficients, compassHeading);
  }
  const curve = curveByCompass(card);
  checkFinite('compassHeading', compassHeading);
  return curve.value(compassHeading);
}
