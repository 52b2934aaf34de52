import { checkFinite } from '../angle/check-number.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { curveByCompass, type CardByCompass } from './curve-by-compass.js';
import type { DeviationCard } from './deviation-card.js';
import { exactCurve } from './exact-curve.js';
import { headingInverse, type HeadingFound, type HeadingRange } from './heading-inverse.js';

/** What a card says. Headings in: any finite degrees; out: [0, 360). Deviations in degrees, east positive. */
export interface DeviationCurve {
  readonly kind: DeviationCard['kind'];
  /** Deviation on a compass heading; null where an exact card has none or two for it. */
  at(compassHeading: number): number | null;
  /** Magnetic heading on a compass heading; null as `at`. */
  toMagnetic(compassHeading: number): number | null;
  /** Compass heading for a magnetic one, with every answer where the card is too steep for one. */
  toCompass(magneticHeading: number): HeadingFound;
  /** Deviation on a magnetic heading; null where `toCompass` is not determined. */
  onMagnetic(magneticHeading: number): number | null;
  /** Magnetic headings with more than one compass heading; for an exact card compass headings with no or more than one magnetic. */
  readonly ambiguous: readonly HeadingRange[];
  /**
   * Where the deviation falls fastest: by compass heading for a table or approximate card, where
   * a slope of −1 or less makes `toCompass` ambiguous. For an exact card the change of minus
   * the deviation by magnetic heading, where −1 or less makes `at` ambiguous.
   */
  readonly steepest: { readonly heading: number; readonly slope: number };
}

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
    steepest: inverse.steepest,
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
