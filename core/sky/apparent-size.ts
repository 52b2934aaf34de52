import { EQUATORIAL_RADIUS } from '../angle/ellipsoid.js';
import { asinDegrees } from '../angle/trigonometry.js';
import type { BodyName } from './body.js';

const ASTRONOMICAL_UNIT = 149_597_870.7;
const EARTH_RADIUS_KM = EQUATORIAL_RADIUS / 1000;
/** Radius of the Moon over that of the Earth: IAU 1982, from memory. */
const MOON_RATIO = 0.2725076;
/** Semidiameter of the Sun at one astronomical unit, seconds of arc: Auwers, as the almanacs use it, from memory. */
const SUN_SEMIDIAMETER = 959.63;
/** Equatorial radii of the planets, km: IAU working group 2015, from memory; Venus with her clouds, which are what is seen. */
const planetRadius: Partial<Record<BodyName, number>> = { Venus: 6110, Mars: 3396.19, Jupiter: 71492, Saturn: 60268 };

/** What a body's distance does to its altitude and its limbs, degrees. */
export interface ApparentSize {
  readonly horizontalParallax: number;
  readonly semidiameter: number;
}

function radiusOf(body: BodyName): number {
  if (body === 'Moon') return MOON_RATIO * EARTH_RADIUS_KM;
  return planetRadius[body] ?? 0;
}

/** Equatorial horizontal parallax and semidiameter at a distance in astronomical units; both 0 for a star (null). */
export function apparentSize(body: BodyName, distance: number | null): ApparentSize {
  if (distance === null) return { horizontalParallax: 0, semidiameter: 0 };
  const kilometres = distance * ASTRONOMICAL_UNIT;
  return {
    horizontalParallax: asinDegrees(EARTH_RADIUS_KM / kilometres),
    semidiameter: body === 'Sun' ? SUN_SEMIDIAMETER / 3600 / distance : asinDegrees(radiusOf(body) / kilometres),
  };
}
