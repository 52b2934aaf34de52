import { isStar } from './body.js';
import type { BodyName, PlanetName } from './body.js';
import type { Ephemeris } from './ephemeris.js';
import { LIGHT } from './light.js';
import { starDirection } from './star-direction.js';
import { add, length, scale, subtract, unit } from './vector.js';
import type { Vector } from './vector.js';

export interface ApparentVector {
  /** Unit vector in the true equator and equinox of date, geocentric, apparent. */
  readonly direction: Vector;
  /** From the Earth's centre when the light left, astronomical units; null for a star. */
  readonly distance: number | null;
  /** From the Sun, astronomical units; null for Sun, Moon and stars. */
  readonly distanceFromSun: number | null;
}

/** The direction as the moving Earth sees it, to the first order of its speed: the next is 0.001″. */
function aberrated(direction: Vector, { earthVelocity }: Ephemeris): Vector {
  return unit(add(unit(direction), scale(earthVelocity, 1 / LIGHT)));
}

/** A planet and its distance from the Sun when the light left it. */
function planetAsSeen(name: PlanetName, ephemeris: Ephemeris): { fromEarth: Vector; distanceFromSun: number } {
  // One round is enough: the second moves the time by a ten-thousandth of the first.
  const first = length(subtract(ephemeris.planet(name, 0), ephemeris.earth));
  const fromSun = ephemeris.planet(name, first / LIGHT);
  return { fromEarth: subtract(fromSun, ephemeris.earth), distanceFromSun: length(fromSun) };
}

function seen(fromEarth: Vector, apparent: Vector, ephemeris: Ephemeris, distanceFromSun: number | null = null): ApparentVector {
  return { direction: ephemeris.toEquatorOfDate(apparent), distance: length(fromEarth), distanceFromSun };
}

/**
 * Apparent geocentric direction of a body: light time, aberration, precession, nutation;
 * for stars proper motion and parallax. The bending of light by the Sun is left out: it
 * is below 0.02″ from 20° off the Sun.
 */
export function apparentVector(body: BodyName, ephemeris: Ephemeris): ApparentVector {
  if (isStar(body)) {
    const direction = aberrated(starDirection(body, ephemeris), ephemeris);
    return { direction: ephemeris.toEquatorOfDate(direction), distance: null, distanceFromSun: null };
  }
  if (body === 'Sun') {
    const fromEarth = scale(ephemeris.earth, -1);
    return seen(fromEarth, aberrated(fromEarth, ephemeris), ephemeris);
  }
  if (body === 'Moon') {
    // The Moon shares the Earth's way round the Sun: no aberration of it.
    const fromEarth = ephemeris.moon();
    return { direction: unit(fromEarth), distance: length(fromEarth), distanceFromSun: null };
  }
  const { fromEarth, distanceFromSun } = planetAsSeen(body, ephemeris);
  return seen(fromEarth, aberrated(fromEarth, ephemeris), ephemeris, distanceFromSun);
}
