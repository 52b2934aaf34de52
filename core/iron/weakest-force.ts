import { wrap360 } from '../angle/wrap.js';
import type { EarthField } from './earth-field.js';
import type { IronParameters } from './iron-parameters.js';
import { earthInShipAxes, forceAtCompass } from './poisson.js';

export interface ForceOnHeading {
  /** Degrees [0, 360). */
  readonly magneticHeading: number;
  /** In the unit of the field, 0 or more. */
  readonly directiveForce: number;
}

const STEP = 1;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The headings on which the directive force is least, the weakest first; parameters already
 * heeled. Its square is a curve of the second order in the heading, so that there are two
 * such headings at the most; each is narrowed down by the golden section.
 */
export function leastForces(iron: IronParameters, field: EarthField): ForceOnHeading[] {
  const force = (heading: number): number => {
    const { x, y } = forceAtCompass(iron, earthInShipAxes(field, heading));
    return Math.hypot(x, y);
  };
  const samples = Array.from({ length: 360 / STEP }, (_, index) => force(index * STEP));
  const at = (index: number): number => samples[(index + samples.length) % samples.length] ?? Infinity;
  return samples
    .map((directiveForce, index) => ({ index, directiveForce }))
    .filter(({ index, directiveForce }) => directiveForce <= at(index - 1) && directiveForce <= at(index + 1))
    .sort((one, other) => one.directiveForce - other.directiveForce)
    .slice(0, 2)
    .map(({ index }) => {
      const heading = narrow(force, (index - 1) * STEP, (index + 1) * STEP);
      return { magneticHeading: wrap360(heading), directiveForce: force(heading) };
    })
    .sort((one, other) => one.directiveForce - other.directiveForce);
}

function narrow(force: (heading: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  while (high - low > 1e-11) {
    const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (force(left) <= force(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}
