import { normalise } from '../text/normalise.js';
import { refused, within } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { parseSexagesimal } from './parse-sexagesimal.js';

export interface SignedAngleGrammar {
  /** The letter that makes the angle positive. */
  readonly positive: string;
  /** The letter that makes it negative. */
  readonly negative: string;
  /** Largest size, degrees. */
  readonly most: number;
  /** Whether an angle other than 0 without letter or sign is refused, or taken as positive. */
  readonly letterNeeded: boolean;
}

/**
 * Reads an angle that goes two ways from 0: by letter before or after it, or by sign, not
 * by both. `O` is refused: it is east in one language and west in another.
 */
export function parseSignedAngle(text: string, grammar: SignedAngleGrammar): Reading<number> {
  const plain = normalise(text).replace(/DEG(?:REES?)?/, '°');
  if (plain === '') return refused('empty');
  const [, before, body = '', after] = /^([A-Z])? ?(.*?) ?([A-Z])?$/.exec(plain) ?? [];
  if (/[A-Z]/.test(body)) return refused('not-understood');
  if (before !== undefined && after !== undefined) return refused('two-letters');
  const letter = before ?? after;
  if (letter === 'O') return refused('letter-o');
  if (letter !== undefined && letter !== grammar.positive && letter !== grammar.negative) {
    return refused('wrong-letter');
  }
  const [, sign, unsigned = ''] = /^([+-]?) ?(.*)$/.exec(body) ?? [];
  if (sign && letter !== undefined) return refused('sign-and-letter');
  if (unsigned === '') return refused('not-understood');
  const size = parseSexagesimal(unsigned);
  if (!size.ok) return size;
  const negative = sign === '-' || letter === grammar.negative;
  const reading = within(negative ? -size.value : size.value, -grammar.most, grammar.most);
  if (!reading.ok || sign || letter !== undefined || reading.value === 0) return reading;
  return grammar.letterNeeded ? refused('letter-missing') : { ...reading, assumed: grammar.positive };
}
