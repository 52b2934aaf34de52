/**
 * Whole numbers as signs: long tables are written so when the package is built. A number ends in one
 * of the first `FIGURES` signs, its least figure; the greater figures before it are of the others. The
 * figures that come most often have the signs most common in code, so that what packs a script has
 * short ones for both. The comma is none of them: it parts numbers that belong together from the next.
 */
export const SIGNS = 'eo=nrs12ac0:.736?&d{4Sp]5fbh}8y [;9>Fti)(*l+u-Amg/kvzxw|!LRYWEQTOHUCX_PMKBV@ZD<NG~#J%Ij^q';
export const FIGURES = 36;

/** The numbers, 0 or more, that stand in a row of signs. */
export function packedNumbers(signs: string): number[] {
  const numbers: number[] = [];
  let greater = 0;
  for (const sign of signs) {
    const figure = SIGNS.indexOf(sign);
    if (figure < FIGURES) numbers.push(greater * FIGURES + figure);
    greater = figure < FIGURES ? 0 : greater * (SIGNS.length - FIGURES) + figure - FIGURES;
  }
  return numbers;
}

/** The number of either sign for which one of 0 or more stands: even ones for those from 0 up, odd ones for those below. */
export const signed = (number: number): number => (number % 2 ? -(number + 1) / 2 : number / 2);
