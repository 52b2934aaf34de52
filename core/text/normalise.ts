/** The marks people type or paste for the same thing, and the plain one each stands for. */
const marks: readonly (readonly [RegExp, string])[] = [
  [/[\u00ba\u02da\u2070]/g, '°'], // before NFKC, which would turn the ordinal sign into a letter
  [/[\u2033\u201c\u201d\u201f\u02ba\u3003]|[\u2032\u2019']{2}/g, '"'],
  [/[\u2032\u2018\u2019\u201b\u02b9\u02bc\u00b4`]/g, "'"],
  [/[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/g, '-'],
  [/[\u061c\u200b-\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g, ''], // direction marks, joiners
];

/**
 * Typed or pasted text in one plain form: upper case, ASCII digits and marks, single
 * spaces, `°`, `'` and `"` for degrees, minutes and seconds.
 */
export function normalise(text: string): string {
  let plain = text;
  for (const [mark, replacement] of marks) plain = plain.replace(mark, replacement);
  return plain
    .normalize('NFKC')
    .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace(/\u066b/g, ',')
    .toUpperCase()
    .replace(/\s+/g, ' ')
    .trim();
}
