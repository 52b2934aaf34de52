import { checkFinite } from '../angle/check-number.js';
import { wrap360 } from '../angle/wrap.js';
import { harmonics } from './approximate-deviation.js';
import type { DeviationCurve } from './curve-of-card.js';
import { checkExact, exactDeviation, forces, onlyDeviation, type ExactCoefficients } from './exact-deviation.js';
import type { HeadingRange } from './heading-inverse.js';

/** Change of the deviation for one degree of magnetic heading, by differentiating tan δ. */
function slopeByMagnetic(exact: ExactCoefficients, magneticHeading: number): number {
  const deviation = exactDeviation(exact, magneticHeading);
  if (deviation === null) return 0;
  const { B, C, D, E } = exact;
  const { sin, cos, sin2, cos2 } = harmonics(magneticHeading);
  // Along and across the needle: the force, and the change of the two parts of it.
  const { east, north } = forces(exact, magneticHeading);
  const northChange = -B * sin - C * cos - 2 * (D * sin2 + E * cos2);
  const eastChange = B * cos - C * sin + 2 * (D * cos2 - E * sin2);
  return (eastChange * north - northChange * east) / (east ** 2 + north ** 2);
}

/** Where the compass heading falls back fastest against the magnetic, on whole degrees. */
function steepestOf(exact: ExactCoefficients): { heading: number; slope: number } {
  let steepest = { heading: 0, slope: Infinity };
  for (let heading = 0; heading < 360; heading++) {
    const slope = 0 - slopeByMagnetic(exact, heading);
    if (slope < steepest.slope) steepest = { heading, slope };
  }
  return steepest;
}

/** Runs of compass headings without exactly one magnetic heading, the ends found by halving. */
function ambiguousByCompass(exact: ExactCoefficients): readonly HeadingRange[] {
  const unique = (heading: number): boolean => onlyDeviation(exact, heading) !== null;
  const alone = Array.from({ length: 361 }, (_, heading) => unique(heading));
  const edgeAfter = (heading: number): number => {
    let low = heading;
    let high = heading + 1;
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (unique(middle) === alone[heading]) low = middle;
      else high = middle;
    }
    return wrap360(high);
  };
  const starts: number[] = [];
  const ends: number[] = [];
  for (let heading = 0; heading < 360; heading++) {
    if (alone[heading] !== alone[heading + 1]) (alone[heading] ? starts : ends).push(edgeAfter(heading));
  }
  if (starts.length === 0) return alone[0] ? [] : [{ from: 0, to: 360 }];
  return starts.map((from) => ({ from, to: ends.find((end) => end > from) ?? (ends[0] as number) }));
}

/**
 * The curve of exact coefficients. The magnetic heading alone fixes the deviation here, so the
 * way to compass is direct; the way from compass may be ambiguous where the iron is very strong.
 */
export function exactCurve(exact: ExactCoefficients): DeviationCurve {
  checkExact('card.coefficients', exact);
  return {
    kind: 'exact',
    at: (compassHeading) => onlyDeviation(exact, compassHeading),
    toMagnetic(compassHeading) {
      const deviation = onlyDeviation(exact, compassHeading);
      return deviation === null ? null : wrap360(compassHeading + deviation);
    },
    toCompass(magneticHeading) {
      checkFinite('magneticHeading', magneticHeading);
      const deviation = exactDeviation(exact, magneticHeading);
      if (deviation === null) return { determined: false, reason: 'none', headings: [] };
      return { determined: true, heading: wrap360(magneticHeading - deviation) };
    },
    onMagnetic: (magneticHeading) => exactDeviation(exact, magneticHeading),
    get ambiguous() {
      return ambiguousByCompass(exact);
    },
    get steepest() {
      return steepestOf(exact);
    },
  };
}
