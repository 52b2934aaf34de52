import { bodyInSky } from '../sky/body-in-sky.js';
import { checkBody, kindOf } from '../sky/body.js';
import type { BodyName } from '../sky/body.js';
import { isMoonLost } from '../sky/moon-lost.js';
import { skyAt } from '../sky/sky-at.js';
import { warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';

/** Altitude of the Sun, degrees, above which the eye finds no star, and no planet but Venus. Common practice, no source. */
const TOO_LIGHT = { star: -3, planet: 0 };

/**
 * A star or planet supposed to have been seen in daylight, or the Moon while she is new: as a rule
 * the time is wrong, or the body. Venus may be found by day while she stands high, on the horizon as little as the rest.
 */
export function lightCautions(
  observed: BodyName,
  place: { readonly latitude: number; readonly longitude: number; readonly instant: Date },
  where: 'on-horizon' | 'anywhere' = 'anywhere',
): Caution[] {
  const body = checkBody(observed);
  const kind = kindOf(body);
  if (kind === 'Moon') return isMoonLost(skyAt(place.instant)) ? [warning('lost-beside-sun', { body })] : [];
  if (kind === 'Sun' || (body === 'Venus' && where === 'anywhere')) return [];
  const { altitude } = bodyInSky('Sun', place);
  return altitude > TOO_LIGHT[kind] ? [warning('lost-in-daylight', { body, sun: quantity(altitude, 'angle') })] : [];
}
