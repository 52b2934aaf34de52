import { isUnset } from './field.js';
import type { FieldInput } from './field.js';

/** The words a choice takes, or a test of one. */
export type Choice = readonly string[] | ((word: string) => boolean);

/** What stands in a choice and is none of its words; empty where all is well. */
export function unknownWord(choice: Choice | undefined, input: FieldInput): string {
  if (!choice || isUnset(input)) return '';
  const word = String(input).trim();
  return word === '' || (typeof choice === 'function' ? choice(word) : choice.includes(word)) ? '' : word;
}

