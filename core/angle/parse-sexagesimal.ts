import { decimalOf, hasTwoDecimalMarks } from '../text/parse-number.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/** A whole run of figures and decimal marks: the lookahead keeps it from being cut in two. */
const FIGURES = '[\\d.,]+(?![\\d.,])';

/**
 * What may stand between two parts. A hyphen that touches only the part behind it is a
 * sign, so `33 -24` is two numbers and not 33 degrees 24 minutes.
 */
const BETWEEN = '(?: - |- ?| ?: ?| )?';

/** Degrees; degrees and minutes; degrees, minutes and seconds. */
const PARTS = new RegExp(
  `^(?<degrees>${FIGURES})(?: ?°)?` +
    `(?:${BETWEEN}(?<minutes>${FIGURES})(?: ?')?` +
    `(?:${BETWEEN}(?<seconds>${FIGURES})(?: ?")?)?)?$`,
);

/** `54'.5` and `12°.5`, as tables print them, with the mark moved behind the decimals. */
function marksLast(text: string): string {
  return text.replace(/([°'"])([.,]\d+)/g, '$2$1');
}

/**
 * Reads an unsigned angle of one to three parts from normalised text, degrees ≥ 0; only
 * the last part may have decimals. The grammar is that of the trade; where it could mean
 * two things it is refused.
 */
export function parseSexagesimal(normalised: string): Reading<number> {
  if (normalised === '') return refused('empty');
  const groups = PARTS.exec(marksLast(normalised))?.groups;
  if (!groups) return refused('not-understood');
  const parts = [groups['degrees'], groups['minutes'], groups['seconds']].filter((part) => part !== undefined);
  if (parts.slice(0, -1).some((part) => /[.,]/.test(part))) return refused('decimals-not-last');
  if (parts.some(hasTwoDecimalMarks)) return refused('two-decimal-marks');
  // `54' .5` may be half a minute or half a second.
  if (parts.slice(1).some((part) => /^[.,]/.test(part))) return refused('not-understood');
  // `0044` is degrees and minutes run together, and 44° to a reader of numbers.
  if (/^\d{4}/.test(parts[0] ?? '')) return refused('out-of-range');
  const [degrees, minutes = 0, seconds = 0] = parts.map(decimalOf);
  if (degrees === null || degrees === undefined || minutes === null || seconds === null) {
    return refused('not-understood');
  }
  if (minutes >= 60) return refused('minutes-over-59');
  if (seconds >= 60) return refused('seconds-over-59');
  return understood(degrees + minutes / 60 + seconds / 3600);
}
