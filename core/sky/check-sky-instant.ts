import { checkInstant } from '../time/check-instant.js';

/** First and last instant the sky is computed for: beyond them the Earth's rotation is not known to a minute of arc. */
const FIRST = '1900-01-01T00:00:00Z';
const LAST = '2100-01-01T00:00:00Z';

/** Whether the sky is computed for an instant. */
export function isSkyInstant(instant: Date): boolean {
  return instant >= new Date(FIRST) && instant <= new Date(LAST);
}

/** Throws `RangeError` naming the argument unless it is an instant from 1900 to 2100, both 1 January 0 h UTC. */
export function checkSkyInstant(name: string, value: Date): void {
  checkInstant(name, value);
  if (!isSkyInstant(value)) {
    throw new RangeError(`${name}: ${value.toISOString()} is not from ${FIRST} to ${LAST}`);
  }
}
