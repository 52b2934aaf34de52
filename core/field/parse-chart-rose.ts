import { degreesAsMark } from '../angle/degrees-as-mark.js';
import { parseSignedAngle } from '../angle/parse-signed-angle.js';
import { normalise } from '../text/normalise.js';
import type { Refusal } from '../text/reading.js';
import type { ChartRose } from './charted-variation.js';
import { monthsAsYears } from './months-as-years.js';
import { parseAnnualChange } from './parse-annual-change.js';

/** What was made of the text of a rose, or why nothing was. */
export type ChartRoseReading =
  | { readonly ok: true; readonly value: ChartRose }
  | { readonly ok: false; readonly refusal: Refusal | 'year-missing' | 'change-missing' };

/** `MAGNETIC VARIATION`, `VAR.`, `DECL. MAG.`, as the language of the chart has it; a note of an anomaly is no rose. */
const HEADING = /^(?=.*\d)(?:(?!ANOM|LOCAL)\p{L}{2,}\.? ?)+[:=]? ?/u;
const YEARS = /(?<![\d.,°'"])(?:1[5-9]|2[01])\d\d(?:[.,]\d+)?(?![\d°'"]| ?['°"])/g;
/** Quarters of a degree or a minute, as older charts print them: `4¼°`. */
const QUARTERS = /(?:(?<!\d)(\d{1,3}) ?)?([¼½¾])(?![\d.,])/g;
const decimalsOf: Readonly<Record<string, string>> = { '¼': '.25', '½': '.5', '¾': '.75' };
const VARIATION = /^(?:[EWO] ?)?[+-]?[\d°'".,: -]*\d[\d°'".,: -]*(?:[EWO](?![A-Z]))?/;

/**
 * Reads the variation as a chart prints it in a compass rose: `4°15′W 2015 (8′E)`,
 * `VAR 3°05'E (2018) Annual Decrease 6'`, `10° 20' W (1999) decreasing about 8' annually`,
 * `4¼°W Jan 2015 (8'E)`.
 * Never throws. A bare number for the change is minutes. A change by its sign, `(-8')`, is read
 * where it can mean one thing only: beside an easterly variation, or one by its sign too.
 */
export function parseChartRose(text: string): ChartRoseReading {
  const plain = monthsAsYears(degreesAsMark(normalise(text)))
    .replace(QUARTERS, (_, whole: string | undefined, part: string) => `${whole ?? 0}${decimalsOf[part] ?? ''}`)
    .replace(/(?<=\d) ?MIN(?:UTE)?S?\b\.?/g, "'")
    .replace(/\bEAST(?:ERLY|WARDS?)?\b/g, 'E')
    .replace(/\bWEST(?:ERLY|WARDS?)?\b/g, 'W')
    .replace(HEADING, '');
  if (plain === '') return { ok: false, refusal: 'empty' };
  const years = plain.match(YEARS) ?? [];
  if (years.length === 0) return { ok: false, refusal: 'year-missing' };
  if (years.length > 1) return { ok: false, refusal: 'not-understood' };
  // The year leaves a mark behind, lest the figures on either side of it run together.
  const undated = plain.replace(YEARS, ';').replace(/^[; :,()]+/, '').trim();
  const angle = VARIATION.exec(undated)?.[0] ?? '';
  const variation = parseSignedAngle(angle, { positive: 'E', negative: 'W', most: 180, letterNeeded: true });
  if (!variation.ok) return { ok: false, refusal: variation.refusal === 'empty' ? 'not-understood' : variation.refusal };
  const rest = undated.slice(angle.length);
  if (/^[();:,. ]*$/.test(rest)) return { ok: false, refusal: 'change-missing' };
  const change = parseAnnualChange(rest, variation.value, !/[EW]/.test(angle));
  if (!change.ok) return change;
  const year = Number((years[0] as string).replace(',', '.'));
  return { ok: true, value: { variation: variation.value, year, annualChangeMinutes: change.value } };
}
