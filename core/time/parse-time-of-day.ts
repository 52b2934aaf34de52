import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/** The ways to write a time of day: hours, minutes, seconds or none, and their decimals. */
const shapes: readonly RegExp[] = [
  /^(?<h>\d{2})(?<m>\d{2})(?:(?<s>\d{2})(?:[.,](?<f>\d{1,9}))?)?$/,
  // The same mark twice: in `09:05.5` the decimals belong to the minutes.
  /^(?<h>\d{1,2})(?<mark>[:. -])(?<m>\d{2})(?:\k<mark>(?<s>\d{2})(?:[.,](?<f>\d{1,9}))?)?$/,
  /^(?<h>\d{1,2}) ?H ?(?<m>\d{1,2})(?: ?[M'])?$/,
  /^(?<h>\d{1,2}) ?H ?(?<m>\d{1,2}) ?[M'] ?(?<s>\d{1,2})(?:[.,](?<f>\d{1,9}))?(?: ?[S"])?$/,
];

/** An offset, the name of a zone, or one of its letters; H, M and S are hours, minutes and seconds. */
const ZONE = /^\d[\d:.,]* ?(?:[+-] ?\d|(?!AM$|PM$)[A-Z]{2,5}$|[A-GI-LN-RT-Y]$)/;

/** The word for hours and the marks of universal time, which a reader may skip. */
const MARKS_OF_UTC = /(?: ?HRS| ?HOURS)?(?: ?(?:UTC|UT1?|GMT|Z|\+00(?::?00)?))?$/;

/**
 * Reads a time of day, UTC: `09:05:20`, `0905`, `090520`, `09h05m20s`, `09-05-20`, `9.05`,
 * with or without Z, UTC or +00:00 behind it. Seconds of the day, [0, 86400]; 23:59:60, a
 * leap second, is the last of these. A text with a zone of its own is refused.
 */
export function parseTimeOfDay(text: string): Reading<number> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const figures = plain.replace(MARKS_OF_UTC, '');
  let parts: Record<string, string | undefined> | undefined;
  for (const shape of shapes) parts ??= shape.exec(figures)?.groups;
  if (!parts) return refused(ZONE.test(figures) ? 'not-utc' : 'not-understood');
  const [hours, minutes, seconds] = [Number(parts['h']), Number(parts['m']), Number(parts['s'] ?? 0)];
  if (hours > 23) return refused('hours-over-23');
  if (minutes > 59) return refused('minutes-over-59');
  const leapSecond = hours === 23 && minutes === 59 && seconds === 60 && parts['f'] === undefined;
  if (seconds > 59 && !leapSecond) return refused('seconds-over-59');
  return understood(hours * 3600 + minutes * 60 + seconds + Number(`0.${parts['f'] ?? 0}`));
}
