import { checkRange } from '../angle/check-number.js';
import { atan2Degrees, sinDegrees } from '../angle/trigonometry.js';
import { quantity, type Quantity } from '../working/quantity.js';
import { checkCoefficients, type ApproximateCoefficients } from './approximate-deviation.js';

/** What is to be moved, or looked at where nothing can be moved. */
export type AdvisedCorrector =
  | 'flinders-bar'
  | 'spheres'
  | 'heeling-magnet'
  | 'fore-and-aft-magnets'
  | 'athwartship-magnets'
  | 'alignment';

/**
 * One piece of advice to a licensed adjuster, by code and values; the words belong to the view.
 * Codes, by corrector:
 * `magnet.red-forward`, `magnet.red-aft`, `magnet.red-starboard`, `magnet.red-port`;
 * `spheres.place` (before the heeling magnet), `spheres.athwartships`, `spheres.fore-and-aft`,
 * and the turn of the pair from that stand, `spheres.slew` from abeam, `spheres.slew-fore-and-aft`;
 * `flinders.forward`, `flinders.aft`; `heeling.red-up`, `heeling.red-down`; `alignment.check`.
 */
export interface CorrectorAdvice {
  /** Place in the order of work, from 1. */
  readonly order: number;
  readonly corrector: AdvisedCorrector;
  readonly code: string;
  /** Compass headings to work on, degrees: the first and the one to check and halve on. */
  readonly headings: readonly number[];
  /** The part of the deviation this corrector is to take out on the first heading, degrees, east positive. */
  readonly remove: number | null;
  /**
   * The coefficient; and where the work is done by eye, `seen` on the first heading, which is
   * all taken out, then `left` on the second, of which half is.
   */
  readonly values: Readonly<Record<string, Quantity>>;
  /**
   * Where it comes from, by code. `handbook-…` is American Practical Navigator (Pub. 9, 1995),
   * chapter 6, for the order of work and halving on the opposite heading, and for which way:
   * `…-gazette` New Zealand Gazette 1906, `…-memory` from memory. `memory`, `memory-angle` (the
   * angle derived) and `memory-hemispheres` (the same in either hemisphere) are from memory.
   */
  readonly source: 'handbook-gazette' | 'handbook-memory' | 'memory' | 'memory-angle' | 'memory-hemispheres';
}

export interface AdjustmentNeeds {
  /** Approximate coefficients of the deviation as found, degrees. */
  readonly coefficients: ApproximateCoefficients;
  /** Poisson's c, a pure number, where two magnetic latitudes have told it. */
  readonly c?: number | null | undefined;
  /** Side to which the north point is drawn when the ship heels. */
  readonly heelDraws?: 'high-side' | 'low-side' | null | undefined;
  /** Smaller coefficients are left alone, degrees; 0.5 if left out (common practice, no source). */
  readonly worth?: number;
}

type Draft = Omit<CorrectorAdvice, 'order'>;

/**
 * The work on two headings, on which the part has the two signs. It begins where what is seen is taken out by moving the
 * corrector the way advised: where the constant part is more than half of it and against it, on the other heading.
 */
function work(size: number, constant: number, [first, second]: readonly [number, number]): Pick<Draft, 'headings' | 'remove'> & { seen: Quantity; left: Quantity } {
  const turned = constant * size < 0 && Math.abs(constant) > Math.abs(size) / 2;
  const remove = turned ? -size : size;
  return {
    headings: turned ? [second, first] : [first, second],
    remove,
    seen: quantity(remove + constant, 'error'),
    left: quantity(2 * constant, 'error'),
  };
}

/**
 * The red end repels the north point: +B (drawn forward) asks for red forward, +C (drawn to
 * starboard) for red to starboard. Removing all that is seen on one heading removes the
 * constant part with it; that part shows twice on the opposite heading, and halving restores it.
 */
function magnetAdvice(name: 'B' | 'C', { A, B, C, E }: ApproximateCoefficients): Draft {
  const along = name === 'B';
  const size = along ? B : C;
  const constant = along ? A - E : A + E;
  const way = along ? (size > 0 ? 'red-forward' : 'red-aft') : size > 0 ? 'red-starboard' : 'red-port';
  const { headings, remove, seen, left } = work(size, constant, along ? [90, 270] : [0, 180]);
  return {
    corrector: along ? 'fore-and-aft-magnets' : 'athwartship-magnets',
    code: `magnet.${way}`,
    headings,
    remove,
    values: {
      [name]: quantity(size, 'error'),
      seen,
      left,
      // The seven-tenths rule of the same chapter: a semicircular part acts by its sine.
      onIntercardinals: quantity(size * sinDegrees(45), 'error'),
    },
    source: along ? 'handbook-memory' : 'handbook-gazette',
  };
}

/**
 * Spheres abeam cure +D, fore and aft −D. Slewed clockwise by α a pair abeam acts as
 * −k sin 2(ζ′ + α), so tan 2α = E/D cures both; fore and aft the turn is the other way.
 */
function sphereAdvice({ A, D, E }: ApproximateCoefficients, worth: number): Draft[] {
  const drafts: Draft[] = [];
  const small = Math.abs(D) < worth || D === 0;
  const abeam = small || D > 0;
  if (!small) {
    // Halved on an adjacent intercardinal, where D acts the other way.
    const { headings, remove, seen, left } = work(D, A, [45, 135]);
    drafts.push({
      corrector: 'spheres',
      code: abeam ? 'spheres.athwartships' : 'spheres.fore-and-aft',
      headings,
      remove,
      values: { D: quantity(D, 'error'), seen, left },
      source: 'handbook-memory',
    });
  }
  if (Math.abs(E) >= worth && E !== 0) {
    const clockwise = (abeam ? atan2Degrees(E, D) : atan2Degrees(-E, -D)) / 2;
    drafts.push({
      corrector: 'spheres',
      code: abeam ? 'spheres.slew' : 'spheres.slew-fore-and-aft',
      headings: [0, 90],
      remove: E,
      values: { E: quantity(E, 'error'), clockwise: quantity(clockwise, 'angle') },
      source: 'memory-angle',
    });
  }
  return drafts;
}

/** Flinders bar and spheres go in before the heeling magnet, (from memory). */
function verticalAdvice({ c, heelDraws }: AdjustmentNeeds, spheres: boolean): Draft[] {
  const drafts: Draft[] = [];
  if (c !== undefined && c !== null && c !== 0) {
    drafts.push({
      corrector: 'flinders-bar',
      code: c < 0 ? 'flinders.forward' : 'flinders.aft',
      headings: [90, 270],
      remove: null,
      values: { c: quantity(c, 'number') },
      source: 'memory-hemispheres',
    });
  }
  if (heelDraws !== undefined && heelDraws !== null) {
    if (spheres) drafts.push({ corrector: 'spheres', code: 'spheres.place', headings: [], remove: null, values: {}, source: 'memory' });
    drafts.push({
      corrector: 'heeling-magnet',
      code: heelDraws === 'high-side' ? 'heeling.red-up' : 'heeling.red-down',
      headings: [0, 180],
      remove: null,
      values: {},
      source: 'handbook-memory',
    });
  }
  return drafts;
}

/**
 * What a licensed adjuster might do about these coefficients, in the order of the work:
 * Flinders bar and spheres set by earlier records, heeling magnet, then fore-and-aft magnets
 * on east or west, athwartship magnets on north or south, spheres on an intercardinal. All of
 * the deviation is taken out on the first heading and half of what is left on the second.
 * A is cured by no magnet: lubber line, azimuth circle, variation and gyro want checking.
 *
 * Advice only: the manufacturer's manual and the adjuster prevail.
 * Throws `RangeError` naming a coefficient that is not finite, or `worth` unless 0 to 90.
 */
export function correctorAdvice(needs: AdjustmentNeeds): readonly CorrectorAdvice[] {
  const { coefficients, worth = 0.5 } = needs;
  checkCoefficients('coefficients', coefficients);
  checkRange('worth', worth, 0, 90);
  if (needs.c !== undefined && needs.c !== null) checkRange('c', needs.c, -100, 100);
  const { A, B, C } = coefficients;
  const spheres = sphereAdvice(coefficients, worth);
  const drafts = verticalAdvice(needs, spheres.length > 0);
  if (Math.abs(B) >= worth && B !== 0) drafts.push(magnetAdvice('B', coefficients));
  if (Math.abs(C) >= worth && C !== 0) drafts.push(magnetAdvice('C', coefficients));
  drafts.push(...spheres);
  if (Math.abs(A) >= worth && A !== 0) {
    const values = { A: quantity(A, 'error') };
    drafts.push({ corrector: 'alignment', code: 'alignment.check', headings: [], remove: null, values, source: 'memory' });
  }
  return drafts.map((draft, i) => ({ order: i + 1, ...draft }));
}
