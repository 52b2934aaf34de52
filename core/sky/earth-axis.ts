import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { nutationAt } from './nutation.js';
import type { Vector } from './vector.js';

/** How the Earth's axis and equinox lie at an instant, and what brings directions to them. */
export interface EarthAxis {
  /** Greenwich apparent sidereal time with UT1 = UTC, degrees [0, 360). */
  readonly ghaAries: number;
  /** From the mean equator and equinox of J2000.0 to the true ones of date. */
  fromJ2000(direction: Vector): Vector;
  /** From the mean ecliptic and equinox of date to the true equator and equinox of date. */
  fromEcliptic(direction: Vector): Vector;
}

/** A polynomial in seconds of arc, as degrees. */
function arcSeconds(century: number, ...coefficients: readonly number[]): number {
  return coefficients.reduceRight((sum, coefficient) => sum * century + coefficient, 0) / 3600;
}

type Turn = (vector: Vector) => Vector;

/** What a point is from axes turned by an angle about the first, from the second towards the third; made once for many points. */
function aboutX(angle: number): Turn {
  const [sine, cosine] = [sinDegrees(angle), cosDegrees(angle)];
  return ([x, y, z]) => [x, cosine * y + sine * z, cosine * z - sine * y];
}

/** The same about the second axis, from the third towards the first. */
function aboutY(angle: number): Turn {
  const [sine, cosine] = [sinDegrees(angle), cosDegrees(angle)];
  return ([x, y, z]) => [cosine * x - sine * z, y, sine * x + cosine * z];
}

/** The same about the third, from the first towards the second. */
function aboutZ(angle: number): Turn {
  const [sine, cosine] = [sinDegrees(angle), cosDegrees(angle)];
  return ([x, y, z]) => [cosine * x + sine * y, cosine * y - sine * x, z];
}

/**
 * The Earth's axis at an instant: `days` of UTC since J2000.0, `century` Julian centuries
 * of terrestrial time since. Source: precession, obliquity and sidereal time of IAU 2006
 * (Capitaine, Wallace and Chapront, Astronomy and Astrophysics 412, 2003), from memory;
 * tests hold them against ERFA.
 */
export function earthAxisAt(days: number, century: number): EarthAxis {
  const zeta = arcSeconds(century, 2.650545, 2306.083227, 0.2988499, 0.01801828);
  const z = arcSeconds(century, -2.650545, 2306.077181, 1.0927348, 0.01826837);
  const theta = arcSeconds(century, 0, 2004.191903, -0.4294934, -0.04182264);
  const obliquity = arcSeconds(century, 84381.406, -46.836769, -0.0001831, 0.0020034);
  const { inLongitude, inObliquity } = nutationAt(century);
  // The whole turns of the days are left out, so that none of the figures is lost.
  const rotation = 360 * (0.779057273264 + 0.00273781191135448 * days + (days % 1));
  const sidereal = rotation + arcSeconds(century, 0.014506, 4612.156534, 1.3915817, -0.00000044) + inLongitude * cosDegrees(obliquity + inObliquity);
  const [nutated, toEquator] = [aboutZ(-inLongitude), aboutX(-obliquity - inObliquity)];
  const [first, second, third, toEcliptic] = [aboutZ(-zeta), aboutY(theta), aboutZ(-z), aboutX(obliquity)];
  const fromEcliptic: Turn = (vector) => toEquator(nutated(vector));
  return {
    ghaAries: wrap360(sidereal),
    fromEcliptic,
    fromJ2000: (vector) => fromEcliptic(toEcliptic(third(second(first(vector))))),
  };
}
