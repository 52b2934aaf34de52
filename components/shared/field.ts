import type { Reading } from '../../core/text/reading.js';

/** The north a direction is counted from, by the letter of the English catalogue: true, magnetic, compass, gyro. */
export type North = 'T' | 'M' | 'C' | 'G';

/**
 * A text with the words of a language in the English ones that fields read: `3,2 oeste` is
 * `3,2 W`. `words` lists them as `este=E oeste=W`; only whole words are taken.
 */
export function inEnglish(text: string, words: string): string {
  return text.replace(/\p{L}+/gu, (word) => {
    const english = ` ${words} `.split(` ${word.toLowerCase()}=`)[1]?.split(' ')[0];
    // Chinese has no gap between word and figures, English needs one; a mark such as - stands close, and some words stand for nothing.
    return english?.[1] ? ` ${english} ` : (english ?? word);
  });
}

/** How one field of a widget is read, written, stepped and shown back. */
export interface Field<T> {
  /** Reads what was typed; a reader may have refusals of its own, worded in its widget's catalogue. */
  parse(text: string): Reading<T> | { readonly ok: false; readonly refusal: string };
  /** Writes a value as a user would type it; also how a property that is no text is taken over. */
  write(value: T): string;
  /** A number the host sets stands for its figures, as in an attribute: 1455 is 14:55. */
  readonly numbersAreFigures?: boolean;
  /** How the understood value is shown at the end of the field. */
  show(value: T): string;
  /** By which north it is counted; its letter in the page's language stands behind the value. */
  readonly north?: North | '';
  /** The value one step on, for the up and down keys. */
  step?(value: T, direction: 1 | -1): T;
  /** May stay empty. */
  readonly optional?: boolean;
  /** Catalogue key of what is accepted, said with every refusal. */
  readonly accepted: string;
  /** The keys a touch screen offers; those of any text unless given. */
  readonly inputMode?: 'decimal' | 'text' | 'numeric';
}

/** What became of one field: nothing typed, a value, or a refusal. */
export type FieldState<T> =
  | { readonly state: 'empty'; readonly text: '' }
  | { readonly state: 'value'; readonly text: string; readonly value: T; readonly assumed?: string }
  | { readonly state: 'refused'; readonly text: string; readonly refusal: string };

/** What became of several fields, each under its name. */
export type StatesOf<Fields> = { readonly [Name in keyof Fields]: Fields[Name] extends Field<infer T> ? FieldState<T> : never };

/** A property of a widget as a field takes it: text as typed, or a value of the field's own. */
export type FieldInput = string | number | Date | undefined | null;

/** Whether a property says nothing; frameworks write two words when they mean nothing. */
export function isUnset(input: unknown): input is undefined | null | 'undefined' | 'null' {
  return input === undefined || input === null || input === 'undefined' || input === 'null' || Number.isNaN(input);
}

/** What a number may lose in being written: no field is finer than a thousandth. */
const ROUNDING = 0.001;

/** Whether a text says the value it was written for: a longitude of 200° has become another. */
function says<T>(field: Field<T>, text: string, value: unknown): boolean {
  const reading = field.parse(text);
  return reading.ok && (typeof reading.value !== 'number' || typeof value !== 'number' || Math.abs(reading.value - value) <= ROUNDING);
}

/**
 * The text of a property: what the user typed, or a number or date written out. What the
 * field cannot write stands there as it is, and is refused with the reason.
 */
export function textOf<T>(field: Field<T>, input: FieldInput): string {
  if (isUnset(input)) return '';
  if (typeof input === 'string') return input;
  if (field.numbersAreFigures && typeof input === 'number') return String(input);
  try {
    const text = field.write(input as unknown as T);
    return says(field, text, input) ? text : String(input);
  } catch {
    return String(input);
  }
}

/**
 * Reads what a field is given: a text as it stands, also one of the two words of frameworks, which
 * a user may have typed. `words` are those of the page's language for what a field takes in English.
 */
export function readField<T>(field: Field<T>, input: FieldInput, words = ''): FieldState<T> {
  const text = typeof input === 'string' ? input : textOf(field, input);
  if (text.trim() === '') return { state: 'empty', text: '' };
  const plain = field.parse(text);
  const worded = plain.ok ? plain : field.parse(inEnglish(text, words));
  // What is not understood either way is refused as it was typed.
  const reading = worded.ok ? worded : plain;
  if (!reading.ok) return { state: 'refused', text, refusal: reading.refusal };
  return reading.assumed === undefined
    ? { state: 'value', text, value: reading.value }
    : { state: 'value', text, value: reading.value, assumed: reading.assumed };
}

/** The value of a field, or undefined where it is empty or refused. */
export function valueOf<T>(state: FieldState<T>): T | undefined {
  return state.state === 'value' ? state.value : undefined;
}
