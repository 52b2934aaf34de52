import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { DeviationFit } from '../../core/deviation/fit-deviation.js';
import { fittedCard } from '../../core/deviation/fitted-card.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { deviationChart } from '../shared/deviation-chart.js';
import { deviationKey } from '../shared/deviation-key.js';
import { deviationSummary } from '../shared/deviation-summary.js';
import { formatAngle, formatBearing, formatError, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';
import type { CurveResult, CurveState } from './curve-result.js';
import { diagonalDiagram } from './diagonal-diagram.js';

const names = ['A', 'B', 'C', 'D', 'E'] as const;

function coefficientsView({ coefficients, standardErrors, model }: DeviationFit): TemplateResult {
  const unit = model === 'exact' ? '' : '°';
  const decimals = model === 'exact' ? 3 : 1;
  return html`<dl class="split">
    ${names.map((name) => {
      const [value, doubt] = [coefficients[name], standardErrors[name]];
      return html`<div>
        <dt>${name}</dt>
        <dd>
          <bdi dir="ltr">${value === null ? '–' : `${value > 0 ? '+' : ''}${formatNumber(value, decimals)}${unit}`}</bdi>
          ${value === null || doubt === null ? nothing : html`<small><bdi dir="ltr">±&nbsp;${formatNumber(doubt, decimals)}${unit}</bdi></small>`}
        </dd>
      </div>`;
    })}
  </dl>`;
}

/** Whose the coefficients are: the line above them speaks of a card where the readings make no curve of their own. */
const whoseText = (host: LubberElement, { cards }: CurveResult, fit: DeviationFit): string =>
  host.t(fittedCard(fit) ? 'curve.coefficients.fit' : 'curve.coefficients.readings', { name: cards[0]?.name ?? '' });

/** The largest deviation in one line, and whether the limit allows it. */
export function answerView(host: LubberElement, { result }: CurveState): TemplateResult {
  const { largest, withinLimit } = result.check;
  const within = host.t(withinLimit ? 'curve.within' : 'curve.beyond', { limit: formatAngle(result.limit.largest, 0) });
  const where = [host.t('curve.on', { heading: formatBearing(largest.heading, 0) }), within].join(host.t('list.comma'));
  return html`<p class="answer" part="answer">
      <span class="spoken">${host.t('curve.largest')} ${spokenError(largest.deviation, host.t)} ${where}</span>
      <span aria-hidden="true"><span class="name">${host.t('curve.largest')}</span> <bdi dir="ltr">${formatError(largest.deviation)}</bdi><small>${where}</small></span>
    </p>
    ${result.fit ? html`<p class="small">${whoseText(host, result, result.fit)}</p>
          ${coefficientsView(result.fit)}` : nothing}`;
}

/** Curve and key; the canvas, where it stands, hides the vector drawing but on paper. */
export function pictureView(host: LubberElement, state: CurveState, heading: number, drawn: boolean, onPointer: (event: PointerEvent) => void): TemplateResult {
  const [first] = state.curves;
  const summary = first ? deviationSummary(first, host.t) : '';
  return html`<figure class=${drawn ? 'drawn' : ''} role="figure" aria-label=${summary}>
    <div class="live" aria-hidden="true"></div>
    <div class="static" aria-hidden="true" @pointermove=${onPointer} @pointerdown=${onPointer}>
      ${deviationChart({ ...state.content, cursor: heading }, '', host.width.picture)}
    </div>
    ${deviationKey(state.content, host.t)}
  </figure>`;
}

/** The diagram for conversion by hand, opened on request. */
export function diagramView(host: LubberElement, { curves, result }: CurveState, heading: number): TemplateResult | typeof nothing {
  const [first] = curves;
  const deviation = first?.at(heading) ?? null;
  const magnetic = first?.curve.toMagnetic(heading) ?? null;
  if (!first) return nothing;
  const summary =
    deviation === null || magnetic === null
      ? host.t('curve.diagram')
      : host.t('curve.diagram.summary', { compass: formatBearing(heading, 0), deviation: formatError(deviation), magnetic: formatBearing(magnetic) });
  return html`<details part="diagram">
    <summary part="summary">${host.t('curve.diagram')}</summary>
    <p class="hint">${host.t('curve.diagram.how')}</p>
    ${diagonalDiagram(first.curve, Math.abs(result.check.largest.deviation), heading, host.width.picture === 'narrow', summary)}
  </details>`;
}

/** Cautions of the card in use and of the fit. */
export function footView(host: LubberElement, { result }: CurveState): TemplateResult {
  const fromFit = result.fit?.warnings ?? [];
  const codes = new Set(fromFit.map(({ code }) => code));
  return html`${cautionsView(host, [...fromFit, ...result.check.cautions.filter(({ code }) => !codes.has(code))])} ${standingCautions(host)}`;
}
