import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkCorrector, type Corrector, type HorizontalMagnet, type Spheres } from './correctors.js';
import { checkedIron, type IronParameters } from './iron-parameters.js';

type Change = Partial<Record<keyof IronParameters, number>>;

/**
 * The ship's iron with correctors added: each acts as rods or permanent forces of the same
 * model, so the curve changes as the real one would to first order. They are taken as fixed
 * to the ship and without effect on each other. Order does not matter.
 * Throws `RangeError` naming a parameter or what is wrong with a corrector.
 */
export function addCorrectors(parameters: IronParameters, correctors: readonly Corrector[]): IronParameters {
  const sum: Record<keyof IronParameters, number> = { ...checkedIron(parameters) };
  correctors.forEach((corrector, index) => {
    checkCorrector(`correctors[${index}]`, corrector);
    for (const [name, change] of Object.entries(changeBy(corrector))) sum[name as keyof IronParameters] += change;
  });
  return sum;
}

/** What one corrector adds to the ship's parameters. */
function changeBy(corrector: Corrector): Change {
  switch (corrector.kind) {
    case 'spheres':
      return spheres(corrector);
    case 'flinders-bar':
      // Derived: long and thin, it is magnetised along itself only. Its near pole, the upper, is blue where
      // Z is down and draws the north-seeking end towards the bar: forward, it is a rod +c.
      return {
        c: corrector.strength * cosDegrees(corrector.bearing),
        f: corrector.strength * sinDegrees(corrector.bearing),
      };
    case 'fore-and-aft-magnet':
      return { P: (corrector.redEnd === 'forward' ? 1 : -1) * alongMagnet(corrector) };
    case 'athwartship-magnet':
      return { Q: (corrector.redEnd === 'starboard' ? 1 : -1) * alongMagnet(corrector) };
    case 'heeling-magnet':
      // End-on to the compass above it: the force follows the red end. Down is positive.
      return { R: corrector.redEnd === 'up' ? -corrector.force : corrector.force };
  }
}

/**
 * The force at the compass counted towards the red end. Derived: end-on to a magnet the field
 * runs with its moment, blue to red; broadside on (the trays below the card) against it. So a
 * magnet below, red end forward, pushes the needle aft and cures +B, as the trade has it.
 */
function alongMagnet({ place, force }: HorizontalMagnet): number {
  return place === 'end-on' ? force : -force;
}

/**
 * Derived: a sphere of very permeable iron in a field B is a dipole that gives, at the distance
 * r, 2 (radius/r)³ B along the line through it and −(radius/r)³ B across. A pair doubles both;
 * with s = 2 (radius/r)³ and u the direction of the line, the rods are s (3 u u − 1).
 * Abeam: a −s, e +2s, k −s, hence 𝔇 less by 3s/2λ, which cures +D (common practice), and
 * slewed clockwise from there −E. The distance is taken from their centres to one needle point.
 */
function spheres({ radius, distance, bearing }: Spheres): Change {
  const s = 2 * (radius / distance) ** 3;
  const [cos, sin] = [cosDegrees(bearing), sinDegrees(bearing)];
  return {
    a: s * (3 * cos * cos - 1),
    b: 3 * s * sin * cos,
    d: 3 * s * sin * cos,
    e: s * (3 * sin * sin - 1),
    k: -s,
  };
}
