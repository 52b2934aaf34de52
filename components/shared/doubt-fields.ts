import { parseNumber } from '../../core/text/parse-number.js';
import { valueOf } from './field.js';
import type { Field, FieldState } from './field.js';
import { numberField } from './trade-fields.js';

/** One standard deviation of a cause, its unit written or not; left empty, the usual one is supposed. */
function doubtField(most: number, step: number, unit: string): Field<number> {
  return {
    ...numberField(0, most, step, 2, unit, `accepted.doubt.${unit}`),
    parse: (text) => parseNumber(text.replace(new RegExp(`\\s*${unit}\\s*$`), ''), 0, most),
    optional: true,
  };
}

const degrees = doubtField(10, 0.1, '°');
const metres = doubtField(5000, 5, 'm');

/** What a user may suppose of a sight, by the property of the widget: `doubt` and the cause as core names it. */
export const doubtFields = {
  doubtReading: degrees,
  doubtTime: doubtField(600, 1, 's'),
  doubtPosition: doubtField(60, 0.5, 'M'),
  doubtHorizonAltitude: degrees,
  doubtTilt: degrees,
  doubtCharted: degrees,
  doubtMarks: metres,
  doubtShip: metres,
};

type States = Readonly<Record<string, FieldState<unknown>>>;

/** The property that holds what is supposed of a cause. */
export const doubtName = (cause: string): string => `doubt${cause.charAt(0).toUpperCase()}${cause.slice(1)}`;

/** What user or page have supposed, by cause; the usual holds for the rest, and for what is refused. */
export function supposedIn(state: States): Record<string, number> {
  const supposed: Record<string, number> = {};
  for (const [name, each] of Object.entries(state)) {
    const value = Object.hasOwn(doubtFields, name) ? valueOf(each) : undefined;
    if (typeof value === 'number') supposed[name.charAt(5).toLowerCase() + name.slice(6)] = value;
  }
  return supposed;
}
