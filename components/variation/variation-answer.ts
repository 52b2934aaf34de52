import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { ChartRose } from '../../core/field/charted-variation.js';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import type { ModelAgainstRose } from '../../core/field/model-against-rose.js';
import type { VariationReport } from '../../core/field/variation-report.js';
import type { Caution } from '../../core/working/caution.js';
import { cautionsView } from '../shared/caution-view.js';
import { yearlyMinutes } from '../shared/field-elements-view.js';
import { formatAngle, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';
import { yearsText } from './rose-fields.js';
import { changeText, degreesAndMinutes } from './rose-text.js';

function answer(host: LubberElement, spoken: string, figure: string, remark: string): TemplateResult {
  return html`<p class="answer" part="answer">
    <span class="spoken">${spoken}</span>
    <span aria-hidden="true">
      <span class="name">${host.t('variation.answer')}</span> <bdi dir="ltr">${figure}</bdi><small>${remark}</small>
    </span>
  </p>`;
}

function byModel(host: LubberElement, field: MagneticField): TemplateResult {
  if (field.variation === null) return html`<p class="answer" part="answer">${host.t('variation.answer.none')}</p>`;
  const doubt = formatAngle(field.uncertainty.variation ?? 180, 1);
  const words = { model: field.model, doubt };
  const variation = spokenError(field.variation, host.t);
  return answer(host, host.t('variation.answer.spoken', { ...words, variation }), formatError(field.variation), host.t('variation.by.model', words));
}

function byChart(host: LubberElement, { charted }: ModelAgainstRose): TemplateResult {
  return answer(host, host.t('variation.answer.chart.spoken', { variation: spokenError(charted, host.t) }), degreesAndMinutes(charted), host.t('variation.by.chart'));
}

function part(label: string, value: string, remark = ''): TemplateResult {
  return html`<div>
    <dt>${label}</dt>
    <dd><bdi dir="ltr">${value}</bdi> ${remark ? html`<small>${remark}</small>` : nothing}</dd>
  </div>`;
}

/** What is odd about the rose can wait for what stands below; where a compass is of no use belongs beside the answer. */
export const isOfRose = ({ code }: Caution): boolean => code.startsWith('rose');

/** The variation by the model, beside it the chart's and the difference; without a model the chart's alone. */
export function answerView(host: LubberElement, { field, rose, cautions }: VariationReport, entered: ChartRose | undefined): TemplateResult {
  const change = field?.annualChange.variation ?? null;
  const years = rose ? host.t(`variation.split.${rose.years < 0 ? 'before' : 'years'}`, { years: yearsText(Math.abs(rose.years)) }) : '';
  return html`${field ? byModel(host, field) : rose ? byChart(host, rose) : nothing}
    ${cautionsView(host, cautions.filter((caution) => !isOfRose(caution)))}
    <dl class="split" part="split">
      ${rose ? part(host.t('variation.split.chart'), degreesAndMinutes(rose.charted), years) : nothing}
      ${!rose || rose.difference === null ? nothing : part(host.t('variation.split.difference'), formatError(rose.difference))}
      ${change === null ? nothing : part(host.t('variation.split.change'), yearlyMinutes(change))}
      ${entered && rose ? part(host.t('variation.split.change.chart'), changeText(entered.annualChangeMinutes)) : nothing}
    </dl>`;
}
