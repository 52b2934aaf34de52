import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError } from '../../core/angle/parse-position.js';
import { normalise } from '../../core/text/normalise.js';
import { refused } from '../../core/text/reading.js';
import type { Reading } from '../../core/text/reading.js';
import { instantOf, parseInstant } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../core/time/parse-time-of-day.js';
import type { HeadingReckoning, RowHead, SwingMethod, SwingRow } from '../../core/swing/swing-row.js';
import { inEnglish } from '../shared/field.js';
import type { GridRow, TypedColumn } from './grid-row.js';

/** What is the same for all rows unless a row says otherwise. */
export interface GridDefaults {
  readonly method: SwingMethod;
  readonly headingBy: HeadingReckoning;
  /** Day of times that come without one. */
  readonly date: CivilDate | undefined;
  /** Whether a steering compass is read beside the standard. */
  readonly steering: boolean;
  /** What the page's language calls east and west, and the months: see `inEnglish`. */
  readonly words: string;
}

export interface Refused {
  readonly column: TypedColumn;
  readonly refusal: string;
}

/** A row understood, perhaps but for the steering compass; one with nothing to understand yet; or the cell that stands in the way, and why. */
export type ReadRow =
  | { readonly state: 'row'; readonly row: SwingRow; readonly beside?: Refused }
  | { readonly state: 'waiting' }
  | (Refused & { readonly state: 'refused' });

const reckoningOfLetter: Readonly<Record<string, HeadingReckoning>> = { C: 'compass', M: 'magnetic', G: 'gyro' };

/** A letter behind the figures of a head says by which north it is: `045 G`. */
function headingReckoning(row: GridRow, usual: HeadingReckoning): HeadingReckoning | null {
  const letter = /[\d°'".] ?([CMGT])$/.exec(normalise(row.heading))?.[1];
  if (letter === 'T') return null;
  return (letter === undefined ? undefined : reckoningOfLetter[letter]) ?? (row.by || usual);
}

const dashed = /[-\u2010-\u2015\u2212\ufe58\ufe63\uff0d]\s*\d/;

export const methodOf = (row: GridRow, { method }: Pick<GridDefaults, 'method'>): SwingMethod => row.method || method;

/**
 * Bare figures are easterly only where others of the swing have a minus and none a letter:
 * elsewhere nobody can know which way they go.
 */
export function marksWestWithMinus(rows: readonly GridRow[], defaults: Pick<GridDefaults, 'method'>): boolean {
  const texts = rows.filter((row) => methodOf(row, defaults) === 'deviation').map(({ reading }) => reading);
  return texts.some((text) => dashed.test(text) && parseError(text).ok) && !texts.some((text) => /\d\s*°?['′]?\s*[EW]/i.test(text));
}

function readDeviation(text: string, signed: boolean): Reading<number> {
  const reading = parseError(text);
  return !reading.ok && reading.refusal === 'letter-missing' && signed ? parseError(`+${text.trim()}`) : reading;
}

function readTime(text: string, date: CivilDate | undefined): Reading<Date> | { readonly ok: false; readonly refusal: string } {
  const time = parseTimeOfDay(text);
  if (time.ok) return date ? { ok: true, value: instantOf(date, time.value) } : { ok: false, refusal: 'date-missing' };
  const whole = parseInstant(text);
  if (whole.ok && whole.value.getUTCFullYear() > 2099) return refused('out-of-range');
  return whole.ok ? whole : time;
}

function refuse(column: TypedColumn, { refusal }: { readonly refusal: string }): ReadRow {
  return refusal === 'empty' ? { state: 'waiting' } : { state: 'refused', column, refusal };
}

function withReading(head: RowHead, row: GridRow, method: SwingMethod, value: number, defaults: GridDefaults): ReadRow {
  switch (method) {
    case 'deviation':
      return { state: 'row', row: { ...head, method, deviation: value } };
    case 'gyro':
      return { state: 'row', row: { ...head, method, reading: value } };
    case 'sun': {
      const instant = readTime(row.second, defaults.date);
      return instant.ok ? { state: 'row', row: { ...head, method, bearing: value, instant: instant.value } } : refuse('second', instant);
    }
    case 'shore-compass': {
      const shore = parseBearing(row.second);
      return shore.ok ? { state: 'row', row: { ...head, method, bearing: value, shoreBearing: shore.value } } : refuse('second', shore);
    }
    case 'known-object':
    case 'unknown-object':
    case 'transit':
      return { state: 'row', row: { ...head, method, bearing: value } };
  }
}

/** The steering compass's head belongs to a reading of the standard: what is wrong with it leaves that standing. */
function withSteering(read: ReadRow, { steering, steeringStruck }: GridRow): ReadRow {
  const head = parseBearing(steering);
  if (!head.ok && head.refusal === 'empty') return read;
  if (read.state === 'waiting') return { state: 'refused', column: 'reading', refusal: 'standard-missing' };
  if (read.state !== 'row') return read;
  if (!head.ok) return { ...read, beside: { column: 'steering', refusal: head.refusal } };
  return { ...read, row: { ...read.row, steering: head.value, steeringStruck } };
}

/** Reads one row of the grid. `signed`: see `marksWestWithMinus`. */
export function readGridRow(row: GridRow, defaults: GridDefaults, signed: boolean): ReadRow {
  const plain = readTyped(row, defaults, signed);
  if (plain.state !== 'refused') return plain;
  const english = (text: string): string => inEnglish(text, defaults.words);
  const worded = readTyped({ ...row, heading: english(row.heading), reading: english(row.reading), second: english(row.second) }, defaults, signed);
  // What is not understood either way is refused as it was typed.
  return worded.state === 'refused' ? plain : worded;
}

function readTyped(row: GridRow, defaults: GridDefaults, signed: boolean): ReadRow {
  const read = readStandard(row, defaults, signed);
  return defaults.steering ? withSteering(read, row) : read;
}

function readStandard(row: GridRow, defaults: GridDefaults, signed: boolean): ReadRow {
  const method = methodOf(row, defaults);
  const heading = parseBearing(row.heading);
  if (!heading.ok && heading.refusal !== 'empty') return refuse('heading', heading);
  const headingBy = headingReckoning(row, defaults.headingBy);
  if (headingBy === null) return { state: 'refused', column: 'heading', refusal: 'heading-true' };
  const reading = method === 'deviation' ? readDeviation(row.reading, signed) : parseBearing(row.reading);
  if (!reading.ok) return refuse('reading', reading);
  if (!heading.ok) return { state: 'refused', column: 'heading', refusal: 'heading-missing' };
  const head: RowHead = { heading: heading.value, headingBy, struck: row.struck };
  return withReading(head, row, method, reading.value, defaults);
}
