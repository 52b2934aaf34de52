/** Throws `RangeError` unless it is the one or the other way through the horizon. */
export function checkEvent(event: 'rising' | 'setting'): void {
  if (event !== 'rising' && event !== 'setting') throw new RangeError(`event: ${String(event)} is neither rising nor setting`);
}
