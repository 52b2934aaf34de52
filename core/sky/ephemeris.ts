import { terrestrialMinusUtc } from '../time/terrestrial-time.js';
import type { PlanetName } from './body.js';
import { earthAxisAt } from './earth-axis.js';
import { earthSeries } from './earth-series.js';
import { earthVelocity } from './earth-velocity.js';
import { jupiterSeries } from './jupiter-series.js';
import { marsSeries } from './mars-series.js';
import { moonPlace } from './moon-place.js';
import { orbitPlace } from './orbit-place.js';
import { saturnSeries } from './saturn-series.js';
import type { OrbitSeries } from './series.js';
import type { Vector } from './vector.js';
import { venusSeries } from './venus-series.js';

const SECONDS_PER_DAY = 86400;
const DAYS_PER_CENTURY = 36525;
const J2000 = Date.UTC(2000, 0, 1, 12);
/** Light from the Moon's mean distance is this old, days; from the nearest and the farthest 0.07 s less or more, in which she moves 0.04″. */
const LIGHT_FROM_MOON = 1.282 / SECONDS_PER_DAY;

const orbits: Readonly<Record<PlanetName, OrbitSeries>> = { Venus: venusSeries, Mars: marsSeries, Jupiter: jupiterSeries, Saturn: saturnSeries };

/**
 * The Sun, the Moon and the planets at one instant. Vectors are in astronomical units and
 * days and in the mean equator and equinox of J2000.0, unless said otherwise.
 */
export interface Ephemeris {
  /** Julian years of terrestrial time since J2000.0. */
  readonly years: number;
  /** Greenwich apparent sidereal time with UT1 = UTC, degrees [0, 360). */
  readonly ghaAries: number;
  /** The Earth from the Sun. */
  readonly earth: Vector;
  readonly earthVelocity: Vector;
  /** A planet from the Sun, as it was some days earlier. */
  planet(name: PlanetName, daysEarlier: number): Vector;
  /** The Moon from the Earth as its light arrives, in the true equator and equinox of date. */
  moon(): Vector;
  /** A vector in the true equator and equinox of date. */
  toEquatorOfDate(vector: Vector): Vector;
}

/**
 * From the ecliptic of VSOP87 to the mean equator of J2000.0, which lies 0.09″ aside of it.
 * Source: Bretagnon and Francou 1988, eq. 3 (from memory).
 */
function equatorial([x, y, z]: Vector): Vector {
  return [
    x + 0.00000044036 * y - 0.000000190919 * z,
    -0.000000479966 * x + 0.917482137087 * y - 0.397776982902 * z,
    0.397776982902 * y + 0.917482137087 * z,
  ];
}

/** A body from the Sun at a terrestrial time in days since J2000.0. */
function heliocentric(orbit: OrbitSeries, days: number): Vector {
  return equatorial(orbitPlace(orbit, days / DAYS_PER_CENTURY));
}

/** The ephemeris of an instant. Costs some tens of microseconds; the bodies are asked for one by one. */
export function ephemerisAt(instant: Date): Ephemeris {
  const ut = (instant.getTime() - J2000) / (1000 * SECONDS_PER_DAY);
  const tt = ut + terrestrialMinusUtc(instant) / SECONDS_PER_DAY;
  const axis = earthAxisAt(ut, tt / DAYS_PER_CENTURY);
  const earth = orbitPlace(earthSeries, tt / DAYS_PER_CENTURY);
  return {
    years: tt / 365.25,
    ghaAries: axis.ghaAries,
    earth: equatorial(earth),
    earthVelocity: equatorial(earthVelocity(earth, tt / DAYS_PER_CENTURY)),
    planet: (name, daysEarlier) => heliocentric(orbits[name], tt - daysEarlier),
    moon: () => axis.fromEcliptic(moonPlace((tt - LIGHT_FROM_MOON) / DAYS_PER_CENTURY)),
    toEquatorOfDate: axis.fromJ2000,
  };
}
