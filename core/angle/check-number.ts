/** Throws `RangeError` naming the argument unless it is a number in [least, most]. */
export function checkRange(name: string, value: number, least: number, most: number): void {
  if (typeof value !== 'number' || !(value >= least && value <= most)) {
    throw new RangeError(`${name}: ${String(value)} is not a number from ${least} to ${most}`);
  }
}

/** Throws `RangeError` naming the argument unless it is a finite number. */
export function checkFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: ${String(value)} is not a finite number`);
}
