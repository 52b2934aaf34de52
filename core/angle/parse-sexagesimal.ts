import { decimalOf } from '../text/parse-number.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/** `54'.5` and `12°.5`, as tables print them, with the mark moved behind the decimals. */
function marksLast(text: string): string {
  return text.replace(/([°'"])([.,]\d+)/g, '$2$1');
}

/**
 * Degrees; degrees and minutes; degrees, minutes and seconds. Between them stand the marks
 * of the trade or a space, hyphen or colon; only the last may have decimals.
 */
const PARTS = new RegExp(
  '^(?<degrees>[\\d.,]+) ?(?:°|$|(?=[ :-]))' +
    "(?:[ :-]{0,3}(?<minutes>[\\d.,]+) ?(?:'|$|(?=[ :-]))" +
    '(?:[ :-]{0,3}(?<seconds>[\\d.,]+) ?"?)?)?$',
);

/**
 * Reads an unsigned angle of one to three parts from normalised text, degrees ≥ 0.
 * The grammar is that of the trade; where it could mean two things it is refused.
 */
export function parseSexagesimal(normalised: string): Reading<number> {
  if (normalised === '') return refused('empty');
  const groups = PARTS.exec(marksLast(normalised))?.groups;
  if (!groups) return refused('not-understood');
  const parts = [groups['degrees'], groups['minutes'], groups['seconds']].filter((part) => part !== undefined);
  for (const part of parts) {
    if ((part.match(/[.,]/g) ?? []).length > 1) return refused('two-decimal-marks');
  }
  if (parts.slice(0, -1).some((part) => /[.,]/.test(part))) return refused('decimals-not-last');
  const [degrees, minutes = 0, seconds = 0] = parts.map(decimalOf);
  if (degrees === null || degrees === undefined || minutes === null || seconds === null) {
    return refused('not-understood');
  }
  if (minutes >= 60) return refused('minutes-over-59');
  if (seconds >= 60) return refused('seconds-over-59');
  return understood(degrees + minutes / 60 + seconds / 3600);
}
