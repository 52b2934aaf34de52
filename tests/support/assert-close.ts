import assert from 'node:assert/strict';

/** Fails, saying by how much, unless two numbers lie within a tolerance. */
export function assertClose(actual: number, expected: number, tolerance: number, what = ''): void {
  const miss = Math.abs(actual - expected);
  assert.ok(miss <= tolerance, `${what} ${actual} is not ${expected}: off by ${miss}, allowed ${tolerance}`);
}

/** The same for directions: the seam at 0°/360° does not count. */
export function assertSameDirection(actual: number, expected: number, tolerance: number, what = ''): void {
  const miss = Math.abs(((((actual - expected) % 360) + 540) % 360) - 180);
  assert.ok(miss <= tolerance, `${what} ${actual}° is not ${expected}°: off by ${miss}°, allowed ${tolerance}°`);
}
