/** Throws `RangeError` naming the argument unless it is a `Date` that holds an instant. */
export function checkInstant(name: string, value: Date): void {
  if (!(value instanceof Date) || Number.isNaN(value.getTime())) {
    throw new RangeError(`${name}: ${String(value)} is not an instant`);
  }
}
