import { normalise } from '../text/normalise.js';
import type { Reading } from '../text/reading.js';
import { parseError } from './parse-position.js';

/**
 * Reads the error of a gyro as any error, or by how the gyro reads: one that shows 046.5 where 045 is true reads 1.5 high,
 * and true less gyro is 1.5 W. `1.5 high`, `low 2`, `1.5 W`. Degrees (-180, 180], east positive.
 */
export function parseGyroError(text: string): Reading<number> {
  return parseError(normalise(text).replace(/(^|[^A-Z])(HIGH|LOW)(?![A-Z])/g, (_, before: string, reads: string) => before + (reads === 'HIGH' ? 'W' : 'E')));
}
