import type { DeviationCard } from './deviation-card.js';
import type { HeadingFound, HeadingRange } from './heading-inverse.js';

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
