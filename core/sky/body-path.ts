import { wrap180 } from '../angle/wrap.js';
import type { BodyName } from './body.js';
import { STARS_A_DAY } from './hour-angle-rates.js';
import { skyAt } from './sky-at.js';
import type { GeographicalPosition } from './sky-at.js';

const MINUTE = 60_000;
/** Of a star, degrees a millisecond: every body keeps near it, and the rest is smooth. */
const TURN = STARS_A_DAY / 86_400_000;
/** Seven places over a day carry the Moon, the swiftest, to a hundredth of a second of arc. */
const PLACES = 7;

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
  const places = Array.from({ length: PLACES }, (_, index) => skyAt(new Date(from + step * index)).position(body));
  const firstGha = places[0]?.gha ?? 0;
  const smooth = places.map((place, index) => ({ ...place, gha: firstGha + wrap180(place.gha - firstGha - TURN * step * index) }));
  const weights = nodeWeights();
  return (time) => {
    // A loop, not `map` and `reduce`: a search asks hundreds of times.
    let [all, gha, declination, horizontalParallax, semidiameter] = [0, 0, 0, 0, 0];
    for (let index = 0; index < PLACES; index += 1) {
      const place = smooth[index];
      if (!place) continue;
      // Exactly on a place its share would be infinite.
      const share = (weights[index] ?? 0) / ((time - from) / step - index || 1e-12);
      all += share;
      gha += share * place.gha;
      declination += share * place.declination;
      horizontalParallax += share * place.horizontalParallax;
      semidiameter += share * place.semidiameter;
    }
    return {
      gha: gha / all + TURN * (time - from),
      declination: declination / all,
      horizontalParallax: horizontalParallax / all,
      semidiameter: semidiameter / all,
    };
  };
}

/** How fast a body on its path moves at a time, degrees per minute. */
export function motionOn(path: BodyPath, time: number): { hourAngleRate: number; declinationRate: number } {
  const [before, after] = [path(time - MINUTE), path(time + MINUTE)];
  return { hourAngleRate: (after.gha - before.gha) / 2, declinationRate: (after.declination - before.declination) / 2 };
}
