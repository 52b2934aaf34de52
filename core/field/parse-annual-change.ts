import { parseSexagesimal } from '../angle/parse-sexagesimal.js';
import { decimalOf } from '../text/parse-number.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/** Faster than any place outside the blackout zone has seen. */
const MOST_MINUTES = 600;

const NO_CHANGE = /^(?:NO|NIL|ZERO)\b/;
const DIRECTION = /\b(?:(?<decreasing>DECR?(?:EAS(?:E|ES|ING))?)|(?<increasing>INCR?(?:EAS(?:E|ES|ING))?))\b/;
const FILLING = /\b(?:ABOUT|APPROX(?:IMATELY)?|ANN(?:UAL(?:LY)?)?|RATE|OF|IN|CHANGE|YEARLY|(?:(?:PER|A|EACH|EVERY) )?(?:YEAR|ANNUM|YR)|P A|BY)\b/g;
const LETTER = /(?:^|[^A-Z])(?<letter>[EWO])(?![A-Z])/;

/** Minutes of arc of `8'`, `7'.5`, `0°08'`, `0.1°`, `8` (minutes, as charts print them). */
function minutesOf(figures: string): Reading<number> {
  const seconds = /^(\d+) ?' ?([\d.,]+) ?"$/.exec(figures);
  if (seconds) {
    const reading = parseSexagesimal(`0 ${seconds[1]} ${seconds[2]}`);
    return reading.ok ? understood(reading.value * 60) : reading;
  }
  if (figures.includes('°')) {
    const reading = parseSexagesimal(figures);
    return reading.ok ? understood(reading.value * 60) : reading;
  }
  const minutes = decimalOf(figures.replace(/'([.,]\d+)$/, '$1').replace(/ ?'$/, ''));
  return minutes === null ? refused('not-understood') : understood(minutes);
}

/**
 * Reads the annual change of a chart's rose from normalised text, given the variation it
 * changes: `8'E`, `ANNUAL DECREASE 6'`, `DECREASING ABOUT 8' ANNUALLY`, `NO CHANGE`.
 * Minutes of arc in a year, east positive; a decrease goes towards zero. A change by its sign
 * alone, `-8'`, is westerly where the variation is `signed` too; beside one named W it may as well
 * mean less of it, and only beside an easterly one both are the same.
 */
export function parseAnnualChange(normalised: string, variation: number, signed = false): Reading<number> {
  const words = normalised
    .replace(/[();:/]|\.(?!\d)|,(?!\d)/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(FILLING, ' ')
    .trim();
  if (NO_CHANGE.test(words)) return understood(0);
  const { decreasing, increasing } = DIRECTION.exec(words)?.groups ?? {};
  const letter = LETTER.exec(words)?.groups?.['letter'];
  if (letter === 'O') return refused('letter-o');
  const figures = words.replace(DIRECTION, ' ').replace(/[EW]/, ' ').replace(/\s+/g, ' ').trim();
  // A mark that stands apart is a dash.
  const sign = /^[+-](?=\d)/.exec(figures)?.[0];
  const size = minutesOf(sign ? figures.slice(1) : figures);
  if (!size.ok) return size;
  if (size.value > MOST_MINUTES) return refused('out-of-range');
  if (size.value === 0) return size;
  const towards = decreasing ? -Math.sign(variation) : increasing ? Math.sign(variation) : 0;
  const lettered = letter === 'E' ? 1 : letter === 'W' ? -1 : 0;
  if (sign) {
    if (towards !== 0 || lettered !== 0) return refused('sign-and-letter');
    return signed || variation > 0 ? understood(sign === '-' ? -size.value : size.value) : refused('letter-missing');
  }
  if (towards === 0 && lettered === 0) return refused('letter-missing');
  if (towards * lettered < 0) return refused('sign-and-letter');
  return understood((towards || lettered) * size.value);
}
