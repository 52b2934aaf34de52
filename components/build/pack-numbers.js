/** Writes whole numbers as signs, as `core/text/packed-numbers.ts` reads them; `SIGNS` and `FIGURES` are its own. */

/** A number of 0 or more. */
export function signsOf(number, { SIGNS, FIGURES }) {
  const more = SIGNS.length - FIGURES;
  let signs = SIGNS[number % FIGURES];
  for (let left = Math.floor(number / FIGURES); left > 0; left = Math.floor(left / more)) signs = SIGNS[FIGURES + (left % more)] + signs;
  return signs;
}

/** The number of 0 or more that stands for one of either sign. */
export const unsigned = (number) => (number < 0 ? -2 * number - 1 : 2 * number);
