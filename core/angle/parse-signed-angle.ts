import { normalise } from '../text/normalise.js';
import { refused, within } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { parseSexagesimal } from './parse-sexagesimal.js';
import { degreesAsMark } from './degrees-as-mark.js';

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

/** The letter of a text, before or after its figures, and the text without it. */
function takeLetter(plain: string, grammar: SignedAngleGrammar): Reading<{ letter: string; rest: string }> {
  const letters = plain.match(/[A-Z]/g) ?? [];
  // Two letters of the compass are two angles; other words are no angle at all.
  if (letters.length > 1) return refused(/[^NESWO]/.test(letters.join('')) ? 'not-understood' : 'two-letters');
  const letter = letters[0] ?? '';
  if (letter !== '' && !plain.startsWith(letter) && !plain.endsWith(letter)) return refused('not-understood');
  if (letter === 'O') return refused('letter-o');
  if (!['', grammar.positive, grammar.negative].includes(letter)) return refused('wrong-letter');
  return { ok: true, value: { letter, rest: plain.replace(letter, '').trim() } };
}

/**
 * Reads an angle that goes two ways from 0: by letter before or after it, or by sign, not
 * by both. `O` is refused: it is east in one language and west in another.
 */
export function parseSignedAngle(text: string, grammar: SignedAngleGrammar): Reading<number> {
  const plain = degreesAsMark(normalise(text));
  if (plain === '') return refused('empty');
  const lettered = takeLetter(plain, grammar);
  if (!lettered.ok) return lettered;
  const { letter, rest } = lettered.value;
  const [, sign = '', unsigned = ''] = /^([+-]?) ?(.*)$/.exec(rest) ?? [];
  if (sign !== '' && letter !== '') return refused('sign-and-letter');
  if (unsigned === '') return refused('not-understood');
  const size = parseSexagesimal(unsigned);
  if (!size.ok) return size;
  const negative = sign === '-' || letter === grammar.negative;
  const reading = within(negative ? -size.value : size.value, -grammar.most, grammar.most);
  if (!reading.ok || sign !== '' || letter !== '' || reading.value === 0) return reading;
  return grammar.letterNeeded ? refused('letter-missing') : { ...reading, assumed: grammar.positive };
}
