import { checkFinite } from '../angle/check-number.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { curveByCompass, type CardByCompass } from './curve-by-compass.js';
import type { DeviationCurve } from './curve-of-card.js';
import type { DeviationCard } from './deviation-card.js';
import { exactCurve } from './exact-curve.js';
import { headingInverse, type HeadingFound } from './heading-inverse.js';

function byCompass(card: CardByCompass): DeviationCurve {
  const curve = curveByCompass(card);
  const inverse = headingInverse(curve);
  const at = (compassHeading: number): number => {
    checkFinite('compassHeading', compassHeading);
    return curve.value(compassHeading);
  };
  const toCompass = (magneticHeading: number): HeadingFound => {
    checkFinite('magneticHeading', magneticHeading);
    return inverse.find(magneticHeading);
  };
  return {
    kind: card.kind,
    at,
    toMagnetic: (compassHeading) => wrap360(compassHeading + at(compassHeading)),
    toCompass,
    onMagnetic(magneticHeading) {
      const found = toCompass(magneticHeading);
      return found.determined ? wrap180(magneticHeading - found.heading) : null;
    },
    ambiguous: inverse.ambiguous,
    get steepest() {
      return inverse.steepest;
    },
  };
}

/**
 * Reads a card: deviation by compass heading and by magnetic, and the way back.
 * Throws `RangeError` naming a number of the card that is missing or not finite, or as
 * `deviationTable`; and naming a heading that is not finite.
 */
export function deviationCurve(card: DeviationCard): DeviationCurve {
  return card.kind === 'exact' ? exactCurve(card.coefficients) : byCompass(card);
}
