import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { Translate } from './catalogue.js';
import type { ChartContent } from './deviation-chart.js';
import { curveTone } from './curve-tone.js';

function swatch(inner: SVGTemplateResult): TemplateResult {
  return html`<svg viewBox="0 0 28 12" class="swatch" aria-hidden="true">${inner}</svg>`;
}

function line(place: number): SVGTemplateResult {
  const { colour, width, dash } = curveTone(place);
  return svg`<line x1="0" x2="28" y1="6" y2="6" stroke=${colour} stroke-width=${width} stroke-dasharray=${dash.join(' ') || 'none'}></line>`;
}

/** What the lines and marks of a chart of deviations mean. */
export function deviationKey(content: ChartContent, t: Translate): TemplateResult {
  const { curves, points = [], band, limit } = content;
  const marked = (mark: 'suspect' | 'struck'): boolean => points.some((point) => point.mark === mark);
  const cross = svg`<path d="M10 2l8 8m0 -8l-8 8" stroke="currentColor" stroke-width="1.4"></path>`;
  return html`<ul class="key">
    ${curves.map(({ name }, place) => html`<li>${swatch(line(place))}${name}</li>`)}
    ${points.length > 0
      ? html`<li>${swatch(svg`<circle cx="14" cy="6" r="3.2" fill="none" stroke="var(--ink)" stroke-width="1.4"></circle>`)}${t('chart.observed')}</li>`
      : nothing}
    ${marked('suspect') ? html`<li class="suspect">${swatch(svg`${cross}<circle cx="14" cy="6" r="5.3" fill="none" stroke="currentColor"></circle>`)}${t('chart.suspect')}</li>` : nothing}
    ${marked('struck') ? html`<li class="struck">${swatch(cross)}${t('chart.struck')}</li>` : nothing}
    ${band ? html`<li>${swatch(svg`<rect width="28" height="12" fill="var(--accent)" fill-opacity="0.16"></rect>`)}${t('chart.band')}</li>` : nothing}
    ${limit ? html`<li>${swatch(svg`<line x1="0" x2="28" y1="6" y2="6" stroke="var(--warn)" stroke-dasharray="1 4"></line>`)}${t('chart.limit')}</li>` : nothing}
  </ul>`;
}
