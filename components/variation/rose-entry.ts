import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { ChartRose } from '../../core/field/charted-variation.js';
import { choiceView } from '../shared/choice-view.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { roseChangeField, roseField, roseVariationField, roseYearField } from './rose-fields.js';

/** As one line of text as the chart prints it, or in its three parts. */
export type RoseForm = 'printed' | 'parts';

export interface RoseState {
  readonly rose: FieldState<ChartRose>;
  readonly roseVariation: FieldState<number>;
  readonly roseYear: FieldState<number>;
  readonly roseChange: FieldState<number>;
}

/** The rose entered; undefined while it is empty, unfinished or refused. */
export function roseOf(form: RoseForm, state: RoseState): ChartRose | undefined {
  if (form === 'printed') return valueOf(state.rose);
  const variation = valueOf(state.roseVariation);
  const year = valueOf(state.roseYear);
  const annualChangeMinutes = valueOf(state.roseChange);
  if (variation === undefined || year === undefined || annualChangeMinutes === undefined) return undefined;
  return { variation, year, annualChangeMinutes };
}

/** Whether something of a rose is entered that is not yet a whole rose. */
export function roseUnfinished(form: RoseForm, state: RoseState): boolean {
  const shown = form === 'printed' ? [state.rose] : [state.roseVariation, state.roseYear, state.roseChange];
  return roseOf(form, state) === undefined && shown.some((part) => part.state !== 'empty');
}

/** The fields of the rose in the form chosen. */
export function roseEntry(host: LubberElement, form: RoseForm, state: RoseState): TemplateResult {
  const choice = choiceView(
    host,
    'roseForm',
    host.t('variation.rose'),
    form,
    (['printed', 'parts'] as const).map((value) => ({ value, label: host.t(`variation.rose.${value}`) })),
  );
  if (form === 'printed') {
    return html`${choice}
    ${fieldView(host, 'rose', roseField, state.rose, { label: host.t('variation.rose.text'), placeholder: host.t('variation.rose.example') })}`;
  }
  return html`${choice}
    <div class="pair">
      ${fieldView(host, 'roseVariation', roseVariationField, state.roseVariation, { label: host.t('variation.rose.variation') })}
      ${fieldView(host, 'roseYear', roseYearField, state.roseYear, { label: host.t('variation.rose.year'), echo: '' })}
    </div>
    ${fieldView(host, 'roseChange', roseChangeField(valueOf(state.roseVariation)), state.roseChange, { label: host.t('variation.rose.change') })}`;
}
