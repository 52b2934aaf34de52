import fc from 'fast-check';

/** Every character the grammars of angles, bearings, days and times know, and look-alikes. */
const ALPHABET = [
  ...'0123456789', ...'0123456789', ...' .,:-+/°\'"', ...'NSEWOTMCGHZ',
  '′', '″', '’', '−', 'º', '\u00a0', '５', '．', 'deg', 'Nov', 'UTC', '2026', '60', '180', '90', '-', ' ',
];

/** Any text at all: whole characters, broken ones, and what nearly follows a grammar. */
export const anyText = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  fc.array(fc.constantFrom(...ALPHABET), { maxLength: 14 }).map((parts) => parts.join('')),
);

/**
 * Long texts that make a careless pattern try every way to cut them: runs of one kind of
 * character with something wrong at the end.
 */
export function hostileTexts(length: number): string[] {
  const pieces = ['1', '1 ', ' ', ' -', '1.', ',', '°', "1'", 'N', 'N1', 'O', 'T', '1:', '0905', '2026T', 'DEG', 'E1N', 'Z', "'", '-1', 'M', '1H'];
  return pieces.flatMap((piece) => {
    const run = piece.repeat(Math.ceil(length / piece.length));
    return [run, `${run}!`, `N${run}`, `33${run}N`, `2026-11-26T${run}`];
  });
}
