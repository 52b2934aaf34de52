/** A quotient or product where it has a value, null where it was divided by nothing or ran beyond all numbers. */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
