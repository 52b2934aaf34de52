import type { EntryFields } from './entry.js';

/** How one field is held to its form. */
export type FieldForm =
  | { readonly is: 'choice'; readonly choices: readonly string[]; readonly needed?: boolean }
  | { readonly is: 'instant' }
  | { readonly is: 'day' }
  | { readonly is: 'text'; readonly longest: number }
  | { readonly is: 'whole' }
  | { readonly is: 'number'; readonly decimals: number; readonly least: number; readonly most: number; readonly turn?: 'bearing' | 'half-turn' };

const bearing: FieldForm = { is: 'number', decimals: 2, least: 0, most: 360, turn: 'bearing' };
const error: FieldForm = { is: 'number', decimals: 2, least: -180, most: 180, turn: 'half-turn' };
const text = (longest: number): FieldForm => ({ is: 'text', longest });

/**
 * Every field in the one order that the canonical text, the CSV and the JSON all keep, with
 * its fixed decimals. Changing anything here makes another schema.
 */
export const entryFields: readonly (readonly [keyof EntryFields, FieldForm])[] = [
  ['kind', { is: 'choice', choices: ['observation', 'no-observation', 'event', 'correction'], needed: true }],
  ['instant', { is: 'instant' }],
  // A hundred-thousandth of a degree is about a metre.
  ['latitude', { is: 'number', decimals: 5, least: -90, most: 90 }],
  ['longitude', { is: 'number', decimals: 5, least: -180, most: 180, turn: 'half-turn' }],
  ['headingGyro', bearing],
  ['headingStandard', bearing],
  ['headingSteering', bearing],
  ['method', text(40)],
  ['target', text(120)],
  ['bearingBy', { is: 'choice', choices: ['gyro', 'standard', 'steering'] }],
  ['bearing', bearing],
  ['trueBearing', bearing],
  ['errorGyro', error],
  ['errorStandard', error],
  ['errorSteering', error],
  ['variation', error],
  ['variationSource', text(80)],
  ['deviationOf', { is: 'choice', choices: ['standard', 'steering'] }],
  ['deviation', error],
  ['doubt', { is: 'number', decimals: 2, least: 0, most: 180 }],
  ['cardDeviation', error],
  ['difference', error],
  ['heel', { is: 'number', decimals: 1, least: -90, most: 90 }],
  ['watch', { is: 'choice', choices: ['middle', 'morning', 'forenoon', 'afternoon', 'dog', 'first'] }],
  ['observer', text(20)],
  ['event', { is: 'choice', choices: ['adjustment', 'dock', 'lightning', 'cargo', 'lay-up', 'electrical', 'other'] }],
  ['corrects', { is: 'whole' }],
  ['replacement', { is: 'choice', choices: ['observation', 'no-observation', 'event'] }],
  ['compassSerial', text(60)],
  ['cardDate', { is: 'day' }],
  ['remarks', text(2000)],
];

/** Longest text that may be the name of a book. */
export const LONGEST_BOOK_NAME = 200;
