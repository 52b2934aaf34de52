import { AstroTime, Body, GeoMoon, HelioVector, RotateVector, Rotation_EQJ_EQD, SiderealTime, Vector as TimedVector } from 'astronomy-engine';
import { terrestrialMinusUtc } from '../time/terrestrial-time.js';
import type { PlanetName } from './body.js';
import type { Vector } from './vector.js';

const SECONDS_PER_DAY = 86400;
/** Half the span over which the Earth's velocity is taken, days: short beside a month, long beside rounding. */
const VELOCITY_SPAN = 0.1;

/**
 * What astronomy-engine knows of one instant. Vectors are in astronomical units and days
 * and in the mean equator and equinox of J2000.0, unless said otherwise.
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
  /** The Moon from the Earth, as its light arrives: the theory has the light time in it. */
  moon(): Vector;
  /** The same vector in the true equator and equinox of date. */
  toEquatorOfDate(vector: Vector): Vector;
}

/**
 * A time of the library whose dynamical part is ours: its own ΔT is some five seconds too
 * large in 2025, the setter of it is global, and the constructor from terrestrial time
 * may search for ever where its two scales round differently.
 */
function timeOf(ut: number, tt: number): AstroTime {
  const time = new AstroTime(ut);
  time.tt = tt;
  return time;
}

function coordinates({ x, y, z }: TimedVector): Vector {
  return [x, y, z];
}

function heliocentric(body: Body, tt: number): Vector {
  return coordinates(HelioVector(body, timeOf(tt, tt)));
}

/** The ephemeris of an instant. Costs some tens of microseconds; the bodies are asked for one by one. */
export function ephemerisAt(instant: Date): Ephemeris {
  const { ut } = new AstroTime(instant);
  const tt = ut + terrestrialMinusUtc(instant) / SECONDS_PER_DAY;
  const time = timeOf(ut, tt);
  const rotation = Rotation_EQJ_EQD(time);
  const before = heliocentric(Body.Earth, tt - VELOCITY_SPAN);
  const after = heliocentric(Body.Earth, tt + VELOCITY_SPAN);
  const speed = (axis: 0 | 1 | 2): number => (after[axis] - before[axis]) / (2 * VELOCITY_SPAN);
  return {
    years: tt / 365.25,
    ghaAries: SiderealTime(time) * 15,
    earth: heliocentric(Body.Earth, tt),
    earthVelocity: [speed(0), speed(1), speed(2)],
    planet: (name, daysEarlier) => heliocentric(Body[name], tt - daysEarlier),
    moon: () => coordinates(GeoMoon(time)),
    toEquatorOfDate: ([x, y, z]) => coordinates(RotateVector(rotation, new TimedVector(x, y, z, time))),
  };
}
