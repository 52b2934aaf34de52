/** The word for degrees, as keyboards without the mark make it, turned into the mark. */
export function degreesAsMark(normalised: string): string {
  return normalised.replace(/DEG(?:REES?)?/g, '°');
}
