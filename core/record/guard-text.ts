/**
 * Keeps a spreadsheet from running or converting a text of a CSV. An apostrophe goes before
 * a text that does not begin with a letter (a formula, a number, a date, a space before
 * either) or that looks like a day, and after any separator in the text behind which a
 * formula would begin if a program split the line there. Undone exactly by `unguarded`.
 * After what spreadsheets do: common practice (OWASP, CSV injection; from memory).
 */
const NOT_BY_A_LETTER = /^[^\p{L}]/u;

/** `Nov 5`, `may-2026`, `true`: read as days or truth values, not kept as text. */
const CONVERTED = /^(?:\p{L}+[\s./-]*\d|true$|false$|inf|nan$)/iu;

const FORMULA_BEHIND_SEPARATOR = /([;,|\t\n])(?=[\s"']*[=+\-@'＝＋－＠])/g;

export function guarded(text: string): string {
  if (text === '') return '';
  const inner = text.replace(FORMULA_BEHIND_SEPARATOR, "$1'");
  return NOT_BY_A_LETTER.test(inner) || CONVERTED.test(inner) ? `'${inner}` : inner;
}

export function unguarded(text: string): string {
  const inner = text.startsWith("'") ? text.slice(1) : text;
  return inner.replace(/([;,|\t\n])'/g, '$1');
}
