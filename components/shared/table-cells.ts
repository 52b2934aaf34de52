import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError } from '../../core/angle/parse-position.js';

type Cells = readonly string[];

const trimmed = (cells: Cells): Cells => cells.map((cell) => cell.trim()).filter((cell) => cell !== '');

/** Every way a gap parts a line into a heading and something like an angle. */
function partings(line: string, gap: RegExp): Cells[] {
  const found: Cells[] = [];
  for (const match of line.matchAll(gap)) {
    const heading = line.slice(0, match.index).trim();
    const rest = line.slice(match.index + match[0].length).trim();
    const deviation = parseError(rest);
    // A bare figure is an angle too: whether it may go without a letter is the table's to say.
    const angle = deviation.ok || deviation.refusal === 'letter-missing';
    // Three figures and more behind them are another heading, not the degrees of an angle.
    // Only `N 45 E` has a gap within a heading.
    const whole = !/\s/.test(heading) || /^[NS]/i.test(heading);
    if (whole && parseBearing(heading).ok && angle && !/^\d{3}\s/.test(rest)) found.push([heading, rest]);
  }
  return found;
}

/** A cell without the quotation marks a program has put around it; those of seconds stand behind figures only. */
export const unquoted = (cell: string): string => cell.trim().replace(/^"([^"]*)"$/, '$1');

/**
 * The cells of one line: by quotation marks around them, by tab or semicolon where there is
 * one, which a spreadsheet or a list writes; else by a comma before a space, by the gap
 * between heading and deviation, or by the one comma that can stand there. `22,5,2W` stays whole: it can be read two ways.
 */
export function lineCells(text: string): Cells {
  const line = text.trim();
  // A mark that opens a cell is a program's; one that closes figures stands for seconds.
  if (/(^|[,;\t])"/.test(line)) return trimmed((line.match(/"[^"]*"|[^",;\t]+/g) ?? []).map(unquoted));
  const mark = ['\t', ';', '|'].find((sought) => line.includes(sought));
  if (mark) return trimmed(line.split(mark));
  if (/,\s/.test(line)) return trimmed(line.split(/,\s+/));
  if (/\s/.test(line)) return partings(line, /\s+/g)[0] ?? trimmed(line.split(/\s+/));
  const byComma = partings(line, /,/g);
  return byComma.length === 1 ? (byComma[0] as Cells) : trimmed([line]);
}
