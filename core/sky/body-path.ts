import { wrap180 } from '../angle/wrap.js';
import type { BodyName } from './body.js';
import { skyAt } from './sky-at.js';
import type { GeographicalPosition } from './sky-at.js';

const MINUTE = 60_000;
/** Of a star, degrees a millisecond: every body keeps near it, and the rest is smooth (IAU 2000 Earth rotation). */
const TURN = 360.98564736629 / 86_400_000;
/** Seven places over a day carry the Moon, the swiftest, to a hundredth of a second of arc. */
const PLACES = 7;
type Part = keyof GeographicalPosition;

/** Where a body stands at a time in milliseconds since 1970. The hour angle runs on past 360. */
export type BodyPath = (time: number) => GeographicalPosition;

/** For each place of equal steps, the inverse of the product of its distances from the others (Lagrange). */
function nodeWeights(): number[] {
  let weight = 1;
  return Array.from({ length: PLACES }, (_, index) => {
    if (index > 0) weight *= -(PLACES - index) / index;
    return weight;
  });
}

/**
 * The path of a body from one time to another, a day or so: worked out at a few places and
 * interpolated, so that a search may ask for hundreds of positions.
 */
export function bodyPath(body: BodyName, from: number, to: number): BodyPath {
  const step = (to - from) / (PLACES - 1);
  const times = Array.from({ length: PLACES }, (_, index) => from + step * index);
  const places = times.map((time) => skyAt(new Date(time)).position(body));
  const firstGha = places[0]?.gha ?? 0;
  const smooth = places.map((place, index) => ({ ...place, gha: firstGha + wrap180(place.gha - firstGha - TURN * step * index) }));
  const weights = nodeWeights();
  return (time) => {
    // Exactly on a place its share would be infinite.
    const shares = weights.map((weight, index) => weight / (time - (times[index] ?? 0) || 1e-6));
    const all = shares.reduce((sum, share) => sum + share, 0);
    const mean = (part: Part): number => smooth.reduce((sum, place, index) => sum + place[part] * (shares[index] ?? 0), 0) / all;
    return {
      gha: mean('gha') + TURN * (time - from),
      declination: mean('declination'),
      horizontalParallax: mean('horizontalParallax'),
      semidiameter: mean('semidiameter'),
    };
  };
}

/** How fast a body on its path moves at a time, degrees per minute. */
export function motionOn(path: BodyPath, time: number): { hourAngleRate: number; declinationRate: number } {
  const [before, after] = [path(time - MINUTE), path(time + MINUTE)];
  return { hourAngleRate: (after.gha - before.gha) / 2, declinationRate: (after.declination - before.declination) / 2 };
}
