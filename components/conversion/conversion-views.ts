import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution } from '../../core/working/caution.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { formatAngle, formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { sentences } from '../shared/sentences.js';
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
    ${sentences(host.t, host.t('conversion.byHand.wrong', { own: formatBearing(own), off: formatAngle(mark.off ?? 0) }), mark.mistake ? host.t(`conversion.byHand.mistake.${mark.mistake}`) : '')}
  </p>`;
}

const asked = { course: 'course variation deviation gyroError leeway wind byHand', bearing: 'bearing heading variation deviation gyroError byHand' };

/** What is refused, and in place of an answer what is still needed. */
function namedView(host: LubberElement, state: ConversionState, waiting: boolean): TemplateResult {
  const { kind, sources, source, headingBy } = state;
  // A gyro leads to true by its error alone; its head enters a card by way of true.
  const byGyro = (kind === 'bearing' ? state.bearingBy : headingBy) === 'gyro';
  const ofSource = source === 'table' ? [sources.table] : source === 'coefficients' ? sources.coefficients : [sources.deviation];
  const one = (what: string): FieldState<unknown> | undefined => ofSource.find((each) => each.state === what);
  const states: Readonly<Record<string, unknown>> = { ...state, course: state.heading, deviation: one('refused') ?? one('value') ?? { state: 'empty' } };
  const needed: Readonly<Record<string, unknown>> = {
    // Without the wind nobody knows to which side the leeway is.
    wind: valueOf(state.leeway),
    ...(waiting && {
      course: true,
      bearing: true,
      heading: true,
      variation: !byGyro && !state.modelVariation,
      deviation: !byGyro && source !== 'card',
      gyroError: byGyro || (source !== 'value' && headingBy === 'gyro'),
    }),
  };
  return missingView(
    host,
    `${asked[kind]} speed latitude lookGyro lookStandard lookSteering`.split(' ').map((name) => ({
      state: states[name] as FieldState<unknown>,
      label: host.t(`conversion.${name}`),
      needed: Boolean(needed[name]),
    })),
  );
}

/** In place of an answer: what is still needed, and how it is done. */
const waitingView = (host: LubberElement, state: ConversionState): TemplateResult =>
  html`${namedView(host, state, true)}
    <ol class="how">
      ${[1, 2, 3].map((step) => html`<li>${host.t(`conversion.how.${step}`)}</li>`)}
    </ol>`;

/** Whether a caution says that this answer may be wrong: then it is told beside it. What is wrong with the card on other headings can wait, and notes can. */
const isOfAnswer = ({ level, code }: Caution): boolean => level === 'warning' && !/^(slope|lost|half|wide)/.test(code);

/** The answer, or what stands in its way. */
export function headlineView(host: LubberElement, state: ConversionState, input: ConversionInput | null, result: Conversion | null): TemplateResult {
  const reason = result ? noDeviationView(host, result) : nothing;
  const reached = result && result.values[result.to] !== null;
  const shown = host.answer === 'shown';
  const warnings = result && shown ? cautionsView(host, result.cautions.filter(isOfAnswer)) : nothing;
  if (!input || !result || (!reached && reason === nothing)) return html`${warnings} ${waitingView(host, state)}`;
  if (!shown) return html``;
  return html`${reached ? answerView(host, result, state.variation.state === 'empty' ? (state.modelVariation?.model ?? '') : '', warnings) : nothing} ${reason} ${reached ? nothing : warnings}
  ${markView(host, state, input, result)}
  ${namedView(host, state, false)} ${input.wind && result.leeway === null && result.values.true !== null ? html`<p class="waiting">${host.t('conversion.wind.neither')}</p>` : nothing}`;
}

/** What stands below the answer: the chain, the norths, the other cautions and working. */
export function explanationView(host: LubberElement, result: Conversion): TemplateResult {
  return html`<div class="pictures">${chainPicture(host, result, chainInWords(host, result))} ${northsPicture(host, result)}</div>
    ${cautionsView(host, result.cautions.filter((caution) => !isOfAnswer(caution)))}
    <div class="after">${workingView(host, result.steps)}</div>
    ${standingCautions(host)}`;
}
