import { checkFinite, checkRange } from '../angle/check-number.js';
import { checkPosition } from '../sight/geodesic-line.js';
import { checkSkyInstant } from '../sky/check-sky-instant.js';
import { checkInstant } from '../time/check-instant.js';
import { headingReckonings, swingMethods } from './swing-row.js';
import type { SwingRow } from './swing-row.js';
import type { SwingSettings } from './swing-settings.js';

const TURN = 360;

function checkRow(row: SwingRow, name: string): void {
  checkFinite(`${name}.heading`, row.heading);
  if (!headingReckonings.includes(row.headingBy ?? 'compass')) throw new RangeError(`${name}.headingBy: ${String(row.headingBy)} is no reckoning`);
  if (row.steering !== undefined) checkFinite(`${name}.steering`, row.steering);
  if (row.sigma !== undefined) checkRange(`${name}.sigma`, row.sigma, 1e-6, 180);
  switch (row.method) {
    case 'deviation':
      return checkRange(`${name}.deviation`, row.deviation, -180, 180);
    case 'gyro':
      return checkRange(`${name}.reading`, row.reading, 0, TURN);
    case 'shore-compass':
      checkRange(`${name}.shoreBearing`, row.shoreBearing, 0, TURN);
      return checkRange(`${name}.bearing`, row.bearing, 0, TURN);
    case 'sun':
      checkSkyInstant(`${name}.instant`, row.instant);
      return checkRange(`${name}.bearing`, row.bearing, 0, TURN);
    case 'known-object':
    case 'unknown-object':
    case 'transit':
      return checkRange(`${name}.bearing`, row.bearing, 0, TURN);
    default:
      throw new RangeError(`${name}.method: ${String((row as { method: unknown }).method)} is not one of ${swingMethods.join(', ')}`);
  }
}

function checkCircle({ circle }: SwingSettings): void {
  if (!circle) return;
  checkRange('circle.radius', circle.radius, 0, 1e6);
  checkRange('circle.distance', circle.distance, Number.MIN_VALUE, 1e7);
  if (circle.radius * 2 >= circle.distance) throw new RangeError('circle.distance: the object must be farther off than the circle is wide');
}

/** Throws `RangeError` naming what is not in order. */
export function checkSwing(rows: readonly SwingRow[], settings: SwingSettings): void {
  rows.forEach((row, index) => checkRow(row, `rows[${index}]`));
  const { variation, place, instant, object, gyroError, shoreError, constant, sigmas = {} } = settings;
  if (variation !== undefined) checkRange('variation', variation, -180, 180);
  if (place) checkPosition('place', place);
  if (instant) checkInstant('instant', instant);
  if (object) checkRange('object.bearing', object.bearing, 0, TURN);
  if (gyroError !== undefined && gyroError !== null) checkRange('gyroError', gyroError, -180, 180);
  if (shoreError !== undefined) checkRange('shoreError', shoreError, -180, 180);
  if (constant !== undefined && constant !== null) checkRange('constant', constant, -180, 180);
  for (const [method, sigma] of Object.entries(sigmas)) checkRange(`sigmas.${method}`, sigma, 1e-6, 180);
  checkCircle(settings);
}
