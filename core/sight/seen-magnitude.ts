import { sinDegrees } from '../angle/trigonometry.js';

/** Magnitudes lost on the way straight down through clean air at sea; from memory. */
const EXTINCTION = 0.25;

/**
 * How much air the light comes through, 1 from the zenith.
 * Source: Kasten and Young, Applied Optics 28 (1989), from memory.
 */
function airMass(altitude: number): number {
  return 1 / (sinDegrees(altitude) + 0.50572 * (altitude + 6.07995) ** -1.6364);
}

/** Magnitude as it looks at an altitude in degrees: light low in the sky is dimmed by the air. */
export function seenMagnitude(magnitude: number, altitude: number): number {
  return magnitude + EXTINCTION * (airMass(Math.max(0, altitude)) - 1);
}

/** The faintest magnitude found with the eye at altitudes of the Sun in degrees, between them straight; common practice, no source. */
const faintest: readonly (readonly [sunAltitude: number, magnitude: number])[] = [
  [5, -4.2],
  [-0.8, -3.3],
  [-3, -1],
  [-6, 1],
  [-9, 2.6],
  [-12, 4],
];

/** The faintest magnitude that can be found at an altitude of the Sun, degrees; the Moon aside. */
export function faintestSeen(sunAltitude: number): number {
  let [above, limit] = faintest[0] ?? [0, 0];
  if (sunAltitude >= above) return limit;
  for (const [altitude, magnitude] of faintest.slice(1)) {
    if (sunAltitude >= altitude) return limit + ((above - sunAltitude) / (above - altitude)) * (magnitude - limit);
    [above, limit] = [altitude, magnitude];
  }
  return limit;
}
