/** The marks people type or paste for the same thing, and the plain one each stands for. */
const marks: readonly (readonly [RegExp, string])[] = [
  [/[\u00ba\u02da\u2070]/g, '°'],
  [/[\u2032\u2018\u2019\u201b\u02b9\u02bc\u00b4`]/g, "'"],
  [/[\u2033\u201c\u201d\u201f\u02ba\u3003]|''/g, '"'],
  [/[\u2010-\u2015\u2212\ufe58\ufe63]/g, '-'],
  [/\u066b/g, ','], // Arabic decimal mark
  [/[\u00b7\u2219\u22c5]/g, '.'], // the raised point before decimals, as British charts print it
];

/** Marks of writing direction, joiners and the soft hyphen: nobody sees them, pasting brings them. */
const UNSEEN = /[\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g;

/** The full-width forms of East Asian keyboards, each 0xFEE0 above its ASCII character. */
const FULL_WIDTH = /[\uff01-\uff5e]/g;

const ARABIC_DIGITS = /[\u0660-\u0669\u06f0-\u06f9]/g;

/** What may stand for something else, or for nothing; of the signs of every keyboard the grave, and the apostrophe, of which two are seconds. */
const UNPLAIN = /[^ -&(-_a-~]/;

/**
 * Typed or pasted text in one plain form: upper case, ASCII digits and marks, single
 * spaces, `°`, `'` and `"` for degrees, minutes and seconds. Applied twice it changes
 * nothing more. Superior and other fancy figures stay as they are and are understood by
 * nobody: 3² is not 32, which Unicode's own compatibility form would make of it.
 */
export function normalise(text: string): string {
  let plain = text.toUpperCase();
  if (UNPLAIN.test(text)) {
    plain = plain
      .replace(UNSEEN, '')
      .replace(FULL_WIDTH, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
      .replace(ARABIC_DIGITS, (digit) => String(digit.charCodeAt(0) & 15));
    for (const [mark, replacement] of marks) plain = plain.replace(mark, replacement);
  }
  return plain.replace(/\s+/g, ' ').trim();
}
