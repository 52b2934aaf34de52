import { roundTo } from '../angle/format-angle.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { formatDate, formatInstant, parseInstant } from '../time/instant.js';
import { parseDate } from '../time/parse-date.js';
import type { FieldForm } from './entry-fields.js';

/** The value of a field in its own type. */
export type FieldValue = string | number | null;

export type FieldProblem = 'missing' | 'not-a-number' | 'out-of-range' | 'not-a-text' | 'too-long' | 'not-a-choice' | 'not-an-instant' | 'not-a-day';

export type FieldOutcome = { readonly ok: true; readonly value: FieldValue } | { readonly ok: false; readonly problem: FieldProblem };

const taken = (value: FieldValue): FieldOutcome => ({ ok: true, value });
const refuse = (problem: FieldProblem): FieldOutcome => ({ ok: false, problem });

/** Control characters but tab and line end, halves of characters, and marks of byte order: no page shows them. */
const UNWRITABLE = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufeff\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as the book keeps it; applied twice it changes nothing more. */
export function writableText(text: string): string {
  return text.replace(/\r\n?|[\u2028\u2029\u0085]/g, '\n').replace(UNWRITABLE, '').trim();
}

/**
 * A value brought to its decimals in such a way that it is still the same when it is shown to
 * a tenth: 1.248 rounded to 1.25 would then be shown as 1.3, where the sight has said 1.2.
 */
function inDecimals(value: number, decimals: number): number {
  const rounded = roundTo(value, decimals);
  if (decimals < 2 || roundTo(rounded, 1) === roundTo(value, 1)) return rounded;
  // Only what was rounded up to the middle between two tenths comes here.
  return roundTo(rounded - Math.sign(value) * 10 ** -decimals, decimals);
}

function takeNumber(form: Extract<FieldForm, { is: 'number' }>, value: unknown): FieldOutcome {
  if (typeof value !== 'number' || !Number.isFinite(value)) return refuse('not-a-number');
  if (value < form.least || value > form.most) return refuse('out-of-range');
  // Most values are in their form already; that is quickly seen.
  const rounded = Object.is(Number(value.toFixed(form.decimals)), value) ? value : inDecimals(value, form.decimals);
  if (form.turn === 'bearing') return taken(wrap360(rounded));
  return taken(form.turn === 'half-turn' ? wrap180(rounded) : rounded);
}

const FORM_OF_INSTANT = /^(?:(?:19|20)\d\d|2100)-\d\d-\d\dT\d\d:\d\d:\d\dZ$/;

/** Whether a text is an instant as the book writes it. */
export function isWrittenInstant(text: unknown): text is string {
  if (typeof text !== 'string' || !FORM_OF_INSTANT.test(text)) return false;
  const instant = new Date(text);
  // 31 February becomes another day, or none.
  return !Number.isNaN(instant.getTime()) && formatInstant(instant) === text;
}

function takeInstant(value: unknown): FieldOutcome {
  if (value instanceof Date) {
    const year = value.getUTCFullYear();
    return year >= 1900 && year <= 2100 ? taken(formatInstant(value)) : refuse('not-an-instant');
  }
  if (typeof value !== 'string') return refuse('not-an-instant');
  if (isWrittenInstant(value)) return taken(value);
  const reading = parseInstant(value);
  const written = reading.ok ? formatInstant(reading.value) : '';
  // A leap second at the end of 2100 is no more of it.
  return isWrittenInstant(written) ? taken(written) : refuse('not-an-instant');
}

function takeDay(value: unknown): FieldOutcome {
  if (value === '') return taken('');
  const reading = typeof value === 'string' ? parseDate(value) : null;
  if (!reading?.ok) return refuse('not-a-day');
  const { year, month, day } = reading.value;
  return taken(formatDate(new Date(Date.UTC(year, month - 1, day))));
}

/** Brings a value into the form of its field: rounded, wrapped, trimmed; or says why not. */
export function takeValue(form: FieldForm, value: unknown): FieldOutcome {
  const empty = value === undefined || value === null;
  switch (form.is) {
    case 'text': {
      if (empty) return taken('');
      if (typeof value !== 'string') return refuse('not-a-text');
      const text = writableText(value);
      return text.length <= form.longest ? taken(text) : refuse('too-long');
    }
    case 'day':
      return takeDay(empty ? '' : value);
    case 'instant':
      return empty ? refuse('missing') : takeInstant(value);
    case 'choice':
      if (empty || value === '') return form.needed ? refuse('missing') : taken(null);
      return form.choices.includes(value as string) ? taken(value as string) : refuse('not-a-choice');
    case 'whole':
      if (empty) return taken(null);
      return Number.isSafeInteger(value) && (value as number) >= 1 ? taken(value as number) : refuse('out-of-range');
    case 'number':
      return empty ? taken(null) : takeNumber(form, value);
  }
}

/** A value already in its form, as text with fixed decimals; empty where there is none. */
export function fieldText(form: FieldForm, value: FieldValue): string {
  if (value === null) return '';
  return form.is === 'number' ? (value as number).toFixed(form.decimals) : String(value);
}
