import { checkRange } from '../angle/check-number.js';
import { atanDegrees, arcOfDegrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';

function checkFreedom(degreesOfFreedom: number): void {
  if (!Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1) {
    throw new RangeError(`degreesOfFreedom: ${degreesOfFreedom} is not a whole number of 1 or more`);
  }
}

/**
 * Probability that Student's t lies within ±t, by the finite sums for whole degrees of
 * freedom: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory).
 */
export function studentProbability(t: number, degreesOfFreedom: number): number {
  checkFreedom(degreesOfFreedom);
  checkRange('t', t, 0, Number.MAX_VALUE);
  const angle = atanDegrees(t / Math.sqrt(degreesOfFreedom));
  const cos = cosDegrees(angle);
  const odd = degreesOfFreedom % 2 === 1;
  if (degreesOfFreedom === 1) return angle / 90;
  let term = odd ? cos : 1;
  let total = term;
  for (let k = odd ? 3 : 2; k <= degreesOfFreedom - 2; k += 2) {
    term *= (cos * cos * (k - 1)) / k;
    total += term;
  }
  return odd ? angle / 90 + (sinDegrees(angle) * total) / arcOfDegrees(90) : sinDegrees(angle) * total;
}

/**
 * The t that Student's distribution keeps within ±t with a given probability, more than 0
 * and less than 1: `studentLimit(0.95, 10)` is 2.228. Degrees of freedom whole, 1 or more.
 * Throws `RangeError` naming a bad argument.
 */
export function studentLimit(probability: number, degreesOfFreedom: number): number {
  checkFreedom(degreesOfFreedom);
  checkRange('probability', probability, Number.MIN_VALUE, 1 - 1e-9);
  const key = `${probability} ${degreesOfFreedom}`;
  const known = limits.get(key);
  if (known !== undefined) return known;
  if (limits.size >= MOST_LIMITS) limits.clear();
  const limit = searchLimit(probability, degreesOfFreedom);
  limits.set(key, limit);
  return limit;
}

/** While a swing is typed the same few limits are asked for at every key. */
const limits = new Map<string, number>();
const MOST_LIMITS = 64;

function searchLimit(probability: number, degreesOfFreedom: number): number {
  let low = 0;
  let high = 1;
  while (studentProbability(high, degreesOfFreedom) < probability) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (studentProbability(middle, degreesOfFreedom) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
