import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { valueOf } from '../shared/field.js';
import { formatAngle, formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { workingView } from '../shared/working-view.js';
import { chainPicture } from './chain-picture.js';
import { answerView, chainInWords, noDeviationView } from './conversion-answer.js';
import type { ConversionState } from './conversion-state.js';
import type { Conversion, ConversionInput } from '../../core/sight/conversion.js';
import { markByHand } from '../../core/sight/hand-answer.js';
import { northsPicture } from './norths-picture.js';

/** Whether the result by hand agrees, and if not what explains it. */
function markView(host: LubberElement, state: ConversionState, input: ConversionInput, result: Conversion): TemplateResult | typeof nothing {
  const own = valueOf(state.byHand);
  if (own === undefined) return nothing;
  const mark = markByHand(input, result, state.byHand.text);
  if (mark === null) return html`<p class="mark">${host.t('conversion.byHand.only')}</p>`;
  if (mark.outcome === 'right') return html`<p class="mark right">${host.t('conversion.byHand.right', { own: formatBearing(own) })}</p>`;
  if (mark.outcome !== 'wrong') return nothing;
  return html`<p class="mark wrong">
    ${host.t('conversion.byHand.wrong', { own: formatBearing(own), off: formatAngle(mark.off ?? 0) })}
    ${mark.mistake ? host.t(`conversion.byHand.mistake.${mark.mistake}`) : nothing}
  </p>`;
}

/** In place of an answer: what is still needed, and how it is done. */
function waitingView(host: LubberElement, state: ConversionState): TemplateResult {
  const bearing = state.kind === 'bearing';
  const { sources, source, headingBy } = state;
  // A gyro leads to true by its error alone; its head enters a card by way of true.
  const byGyro = (bearing ? state.bearingBy : headingBy) === 'gyro';
  const ofSource = { value: sources.deviation, table: sources.table, card: { state: 'empty', text: '' }, coefficients: { state: 'empty', text: '' } } as const;
  return html`${missingView(host, [
      ...(bearing ? [{ state: state.bearing, label: host.t('conversion.bearing'), needed: true }] : []),
      { state: state.heading, label: host.t(bearing ? 'conversion.heading' : 'conversion.course'), needed: true },
      { state: state.variation, label: host.t('conversion.variation'), needed: !byGyro && !state.modelVariation },
      { state: ofSource[source], label: host.t('conversion.deviation'), needed: !byGyro && source !== 'card' },
      { state: state.gyroError, label: host.t('conversion.gyroError'), needed: byGyro || (source !== 'value' && headingBy === 'gyro') },
    ])}
    <ol class="how">
      ${[1, 2, 3].map((step) => html`<li>${host.t(`conversion.how.${step}`)}</li>`)}
    </ol>`;
}

/** The answer, or what stands in its way. */
export function headlineView(host: LubberElement, state: ConversionState, input: ConversionInput | null, result: Conversion | null): TemplateResult {
  const reason = result ? noDeviationView(host, result) : nothing;
  const reached = result && result.values[result.to] !== null;
  if (!input || !result || (!reached && reason === nothing)) return waitingView(host, state);
  if (host.answer !== 'shown') return html``;
  return html`${reached ? answerView(host, result, state.variation.state === 'empty' ? (state.modelVariation?.model ?? '') : '') : nothing} ${reason} ${markView(host, state, input, result)}
  ${input.wind && result.leeway === null && result.values.true !== null ? html`<p class="waiting">${host.t('conversion.wind.neither')}</p>` : nothing}`;
}

/** What stands below the answer: the chain, the norths, cautions and working. */
export function explanationView(host: LubberElement, result: Conversion): TemplateResult {
  return html`<div class="pictures">${chainPicture(host, result, chainInWords(host, result))} ${northsPicture(host, result)}</div>
    ${cautionsView(host, result.cautions)}
    <div class="after">${workingView(host, result.steps)}</div>
    ${standingCautions(host)}`;
}
