import { roundTo } from '../../core/angle/format-angle.js';
import { parseAnnualChange } from '../../core/field/parse-annual-change.js';
import type { ChartRose } from '../../core/field/charted-variation.js';
import { parseChartRose } from '../../core/field/parse-chart-rose.js';
import { normalise } from '../../core/text/normalise.js';
import type { Field } from '../shared/field.js';
import { formatNumber } from '../shared/figures.js';
import { errorField, numberField } from '../shared/trade-fields.js';
import { changeText, degreesAndMinutes, roseText, typedChange, typedVariation } from './rose-text.js';

/** A rose as the chart prints it, `4°15′W 2015 (8′E)`. */
export const roseField: Field<ChartRose> = {
  parse: parseChartRose,
  write: roseText,
  show: (rose) => `${degreesAndMinutes(rose.variation)}, ${changeText(rose.annualChangeMinutes)}`,
  accepted: 'variation.accepted.rose',
  inputMode: 'text',
};

export const roseVariationField: Field<number> = {
  ...errorField,
  write: typedVariation,
  show: (value) => degreesAndMinutes(value),
  step: (value, direction) => roundTo(value * 60 + direction * 5, 0) / 60,
};

/** The year printed; a whole one means its 1 January. */
export const roseYearField: Field<number> = numberField(1500, 2199, 1, 1, '', 'variation.accepted.year');

/** The annual change; `decreasing 6′` is towards zero, so it is read with the variation it belongs to. */
export function roseChangeField(variation: number | undefined): Field<number> {
  return {
    parse: (text) => parseAnnualChange(normalise(text), variation ?? 0),
    write: (minutes) => typedChange(minutes).replace('′', ''),
    show: (minutes) => changeText(minutes),
    step: (minutes, direction) => roundTo(minutes + direction, 1),
    accepted: 'variation.accepted.change',
    inputMode: 'text',
  };
}

/** How far back the years of a rose are written, for the eye: `11.9`. */
export const yearsText = (years: number): string => formatNumber(years, 1);
