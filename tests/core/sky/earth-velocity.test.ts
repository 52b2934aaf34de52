import { test } from 'node:test';
import vsopEarth from 'astronomia/data/vsop87Bearth';
import { Planet } from 'astronomia/planetposition';
import { degreesOfArc } from '../../../core/angle/trigonometry.js';
import { earthVelocity } from '../../../core/sky/earth-velocity.js';
import { LIGHT } from '../../../core/sky/light.js';
import { pointAt } from '../../../core/sky/orbit-place.js';
import { length, scale, subtract } from '../../../core/sky/vector.js';
import type { Vector } from '../../../core/sky/vector.js';
import { assertClose } from '../../support/assert-close.js';

const earth = new Planet(vsopEarth);

/** The Earth from the Sun by the whole of VSOP87, days after J2000.0. */
function placeAt(days: number): Vector {
  const { lon, lat, range } = earth.position2000(2451545 + days);
  return pointAt(degreesOfArc(lon), degreesOfArc(lat), range);
}

test('the velocity is that of the whole of VSOP87 differentiated, within 0.012″ of aberration, from 1900 to 2100', () => {
  for (let days = -36525; days <= 36525; days += 97.3) {
    const moved = scale(subtract(placeAt(days + 0.1), placeAt(days - 0.1)), 1 / 0.2);
    const miss = length(subtract(earthVelocity(placeAt(days), days / 36525), moved));
    assertClose(degreesOfArc(miss / LIGHT) * 3600, 0, 0.012, `${days} days, seconds of arc`);
  }
});
