import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { choiceView } from '../shared/choice-view.js';
import { deviationTableView } from '../shared/deviation-table-field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { conversionFields } from './conversion-fields.js';
import { deviationSources } from './deviation-source.js';
import type { DeviationSource, SourceStates } from './deviation-source.js';

const names = ['coefficientA', 'coefficientB', 'coefficientC', 'coefficientD', 'coefficientE'] as const;

/** Where the deviation comes from, and the fields of that source only. */
export function sourceView(host: LubberElement, source: DeviationSource, states: SourceStates): TemplateResult {
  const offered = deviationSources.filter((name) => name !== 'card' || states.card);
  return html`${choiceView(
    host,
    'source',
    host.t('conversion.source'),
    source,
    offered.map((value) => ({ value, label: host.t(`conversion.source.${value}`) })),
  )}
  ${source === 'value'
    ? fieldView(host, 'deviation', conversionFields.deviation, states.deviation, { label: host.t('conversion.deviation'), placeholder: host.t('conversion.unknown') })
    : nothing}
  ${source === 'table' ? deviationTableView(host, 'table', states.table, host.t('conversion.table')) : nothing}
  ${source === 'coefficients'
    ? html`<div class="coefficients">
        ${names.map((name, place) =>
          fieldView(host, name, conversionFields[name], states.coefficients[place] ?? { state: 'empty', text: '' }, { label: name.slice(-1), placeholder: '0' }),
        )}
      </div>`
    : nothing}`;
}
