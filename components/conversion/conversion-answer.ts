import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Reckoning } from '../../core/sight/chain-steps.js';
import { formatAngle, formatBearing, formatError } from '../shared/figures.js';
import type { North } from '../shared/field.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenBearing, spokenError } from '../shared/spoken.js';
import type { Conversion } from '../../core/sight/conversion.js';

const letters: Readonly<Record<Reckoning, North>> = { compass: 'C', magnetic: 'M', true: 'T', gyro: 'G' };

function part(label: string, value: string, spoken: string, remark = ''): TemplateResult {
  return html`<div>
    <dt>${label}</dt>
    <dd><bdi dir="ltr" aria-hidden="true">${value}</bdi><span class="spoken">${spoken}</span>${remark ? html` <small>${remark}</small>` : nothing}</dd>
  </div>`;
}

/** One way through the chain as it is written in a row: each value, then what is applied to it. */
function lineOf(host: LubberElement, { values, variation, deviation }: Conversion, way: 'to-compass' | 'to-true'): string | null {
  if (values.true === null || values.magnetic === null || values.compass === null || variation === null || deviation === null) return null;
  const at = (reckoning: 'true' | 'magnetic' | 'compass'): string => `${host.t(`north.${letters[reckoning]}`)} ${formatBearing(values[reckoning] ?? 0)}`;
  const v = `${host.t('conversion.symbol.variation')} ${formatError(variation)}`;
  const d = `${host.t('conversion.symbol.deviation')} ${formatError(deviation)}`;
  const line = way === 'to-compass' ? `${at('true')} − ${v} = ${at('magnetic')} − ${d} = ${at('compass')}` : `${at('compass')} + ${d} = ${at('magnetic')} + ${v} = ${at('true')}`;
  // It may break before a sign only.
  return line.replace(/ (?![−+=])/g, '\u00a0');
}

/** The direction asked for in one line, then the way there and the way back; `model` is named where its variation is used. What is wrong stands next to it. */
export function answerView(host: LubberElement, result: Conversion, model: string, warnings: TemplateResult | typeof nothing): TemplateResult {
  const { to, from, values, kind, leeway, madeGood } = result;
  const value = values[to] ?? 0;
  const name = host.t(`conversion.answer.${kind}.${to}`);
  const there = lineOf(host, result, from === 'compass' ? 'to-true' : 'to-compass');
  const back = lineOf(host, result, from === 'compass' ? 'to-compass' : 'to-true');
  const error = (label: string, of: number | null, remark = ''): TemplateResult | typeof nothing =>
    of === null ? nothing : part(host.t(label), formatError(of), spokenError(of, host.t), remark);
  return html`<p class="answer" part="answer">
      <span class="spoken">${name} ${spokenBearing(value, host.t)}</span>
      <span aria-hidden="true"><span class="name">${name}</span> <bdi dir="ltr">${formatBearing(value)}</bdi></span>
    </p>
    ${warnings}
    ${there === null || back === null
      ? nothing
      : html`<p class="there-and-back"><bdi dir="ltr">${there}</bdi><span class="soft">${host.t('conversion.back')}</span><bdi dir="ltr">${back}</bdi></p>`}
    <dl class="split" part="split">
      ${error('conversion.variation', result.variation, model)} ${error('conversion.deviation', result.deviation)}
      ${error('conversion.compassError', result.compassError)} ${error('conversion.gyroError', result.gyroError)}
      ${leeway === null ? nothing : part(host.t('conversion.leeway'), `${formatAngle(Math.abs(leeway))} ${host.t(leeway < 0 ? 'conversion.port' : 'conversion.starboard')}`, `${formatAngle(Math.abs(leeway))} ${host.t(leeway < 0 ? 'conversion.port' : 'conversion.starboard')}`)}
      ${madeGood === null ? nothing : part(host.t('conversion.madeGood'), `${formatBearing(madeGood)} ${host.t('north.T')}`, spokenBearing(madeGood, host.t))}
    </dl>`;
}

/** Why there is no deviation, with the headings that answer where there are several. */
export function noDeviationView(host: LubberElement, { noDeviation, head }: Conversion): TemplateResult | typeof nothing {
  if (!noDeviation || noDeviation.reason === 'not-given') return nothing;
  const headings = noDeviation.candidates.map((heading) => formatBearing(heading)).join(host.t('list.comma'));
  const by = head.compass === null ? 'compass' : 'magnetic';
  const key = noDeviation.reason === 'ambiguous' && headings ? `conversion.none.ambiguous.${by}` : `conversion.none.${noDeviation.reason}`;
  return html`<p class="waiting wrong">${host.t(key, { headings })}</p>`;
}

/** The picture of the chain in words. */
export function chainInWords(host: LubberElement, { values }: Conversion): string {
  return (['gyro', 'true', 'magnetic', 'compass'] as const)
    .flatMap((name) => (values[name] === null ? [] : [`${host.t(`conversion.by.${name}`)} ${formatBearing(values[name])}`]))
    .join(host.t('list.comma'));
}
