import { acosDegrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import type { ApparentVector } from './apparent-vector.js';
import { checkBody, isStar } from './body.js';
import type { BodyName, PlanetName } from './body.js';
import { checkSkyInstant } from './check-sky-instant.js';
import { skyAt } from './sky-at.js';
import type { Sky } from './sky-at.js';
import { starNames } from './star-catalogue.js';
import { starMagnitudes } from './star-magnitudes.js';
import { dot } from './vector.js';

/** Magnitudes at unit distances and how they fall off with the phase angle in degrees (first, second and third power). */
const planetLight: Record<PlanetName, readonly [number, number, number, number]> = {
  Venus: [-4.4, 0.0009, 0.000239, -0.00000065],
  Mars: [-1.52, 0.016, 0, 0],
  Jupiter: [-9.4, 0.005, 0, 0],
  Saturn: [-8.88, 0.044, 0, 0],
};

/** The light Saturn's rings add, by their tilt towards the Earth; the pole of the rings is at 40.6°, 83.5° N (IAU). */
function ringLight({ direction }: ApparentVector): number {
  const [a, d] = [40.6, 83.5];
  const tilt = Math.abs(dot(direction, [cosDegrees(a) * cosDegrees(d), sinDegrees(a) * cosDegrees(d), sinDegrees(d)]));
  return tilt * (1.25 * tilt - 2.6);
}

function planetMagnitude(body: PlanetName, sky: Sky): number {
  const apparent = sky.apparent(body);
  const [fromEarth, fromSun, sun] = [apparent.distance ?? 1, apparent.distanceFromSun ?? 1, sky.apparent('Sun').distance ?? 1];
  const phase = acosDegrees((fromEarth ** 2 + fromSun ** 2 - sun ** 2) / (2 * fromEarth * fromSun));
  const [bright, first, second, third] = planetLight[body];
  const full = bright + 5 * Math.log10(fromEarth * fromSun) + phase * (first + phase * (second + phase * third));
  return body === 'Saturn' ? full + ringLight(apparent) : full;
}

/** The Moon is so near that her phase angle is what her distance from the Sun leaves of 180°. */
function moonMagnitude(sky: Sky): number {
  const phase = 180 - acosDegrees(dot(sky.apparent('Moon').direction, sky.apparent('Sun').direction));
  return -12.73 + 0.026 * phase + 4e-9 * phase ** 4;
}

/** As `magnitude`, in a sky at hand. */
export function magnitudeIn(sky: Sky, body: BodyName): number {
  if (isStar(body)) return (starMagnitudes[starNames.indexOf(body)] as number) / 100;
  if (body === 'Sun') return -26.7;
  return body === 'Moon' ? moonMagnitude(sky) : planetMagnitude(body, sky);
}

/**
 * Visual magnitude of a body, to a tenth or two: a small number is bright. Throws
 * `RangeError` naming `body`, or `instant` outside 1900-01-01 to 2100-01-01.
 * Source: planets by G. Müller's formulas (Meeus, Astronomical Algorithms, ch. 41), the
 * Moon by Allen, Astrophysical Quantities, both from memory; stars by the catalogue.
 */
export function magnitude(body: BodyName, instant: Date): number {
  const named = checkBody(body);
  checkSkyInstant('instant', instant);
  return magnitudeIn(skyAt(instant), named);
}
