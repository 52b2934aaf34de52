import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { constant, cos, product, quotient, sin, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';

/** A star this near the pole has a short form of its own: Polaris alone, degrees. */
const POLE_STAR = 88.5;
/** Beyond this latitude what the short form leaves out passes a twentieth of a degree (computed, polar distance 0.63°). */
const SHORT_FORM_LATITUDE = 75;

/** Whether the short form of Polaris holds to a twentieth of a degree. */
export function isPoleStar(latitude: number, declination: number): boolean {
  return declination > POLE_STAR && latitude >= 0 && latitude <= SHORT_FORM_LATITUDE;
}

/**
 * The short form of Polaris: Z = p sin LHA / cos L, west of north while LHA is below 180.
 * The first order of the triangle in the polar distance p; from memory, our own working.
 */
export function polarisSteps(latitude: number, declination: number, localHourAngle: number): Step[] {
  const polarDistance = 90 - declination;
  const west = localHourAngle <= 180;
  const size = Math.abs((polarDistance * sinDegrees(localHourAngle)) / cosDegrees(latitude));
  const hourAngle = west ? symbol('LHA') : sum([constant(360)], [symbol('LHA')]);
  const p = quantity(polarDistance, 'angle');
  return [
    {
      code: 'azimuth.polaris.distance',
      symbol: 'p',
      expression: sum([constant(90)], [symbol('d')]),
      values: { d: quantity(declination, 'angle') },
      result: p,
    },
    {
      code: `azimuth.polaris.${west ? 'west' : 'east'}`,
      symbol: 'Z',
      expression: quotient(product(symbol('p'), sin(hourAngle)), cos(symbol('L'))),
      values: { p, LHA: quantity(localHourAngle, 'hourAngle'), L: quantity(latitude, 'latitude') },
      result: quantity(size, 'angle'),
    },
    {
      code: 'azimuth.polaris.bearing',
      symbol: 'T',
      expression: west && size > 0 ? sum([constant(360)], [symbol('Z')]) : symbol('Z'),
      values: { Z: quantity(size, 'angle') },
      result: quantity(wrap360(west ? -size : size), 'bearing'),
    },
  ];
}
