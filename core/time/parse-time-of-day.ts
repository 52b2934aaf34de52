import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/**
 * Reads a time of day, UTC: `09:05:20`, `0905`, `090520`, `09h05m20s`, `9.05`, with or
 * without Z or UTC behind it. Seconds of the day, [0, 86400]; 23:59:60, a leap second, is
 * the last of these. A text with a zone of its own is refused.
 */
export function parseTimeOfDay(text: string): Reading<number> {
  const plain = normalise(text).replace(/ ?(?:UTC|UT1?|GMT|Z)$/, '');
  if (plain === '') return refused('empty');
  if (/^[\dHMS:. ]+ ?(?:[+-] ?\d|[A-Z]{3,4}$)/.test(plain)) return refused('not-utc');
  const parts =
    /^(\d{2})(\d{2})(\d{2})?$/.exec(plain) ??
    /^(\d{1,2})(?:[:. -]|H ?)(\d{1,2})(?:(?:[:. '-]|M ?)(\d{1,2})(?:[.,](\d{1,3}))?)? ?[SM"]?$/.exec(plain);
  if (!parts) return refused('not-understood');
  const [hours, minutes, seconds] = [Number(parts[1]), Number(parts[2]), Number(parts[3] ?? 0)];
  if (hours > 23) return refused('hours-over-23');
  if (minutes > 59) return refused('minutes-over-59');
  const leapSecond = hours === 23 && minutes === 59 && seconds === 60 && parts[4] === undefined;
  if (seconds > 59 && !leapSecond) return refused('seconds-over-59');
  return understood(hours * 3600 + minutes * 60 + seconds + Number(`0.${parts[4] ?? 0}`));
}
