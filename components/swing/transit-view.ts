import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { choiceView } from '../shared/choice-view.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { lineOfMarks } from './settings-given.js';
import type { SwingState } from './swing-state.js';

/** Where the marks entered lie from each other; or why they give no line. */
function lineView(host: LubberElement, state: SwingState): TemplateResult | typeof nothing {
  const found = lineOfMarks(state);
  if (!found) return nothing;
  if (!found.determined) return html`<p class="problem" id="line-problem">${host.t(`transit.none.${found.reason}`, { line: '' })}</p>`;
  return html`<p class="hint" id="line">${host.t('swing.transit.line', { bearing: `${formatBearing(found.line.trueBearing)} T` })}</p>`;
}

/** The transit: its charted bearing, or the two marks from which it is worked out. */
export function transitView(host: LubberElement, state: SwingState, field: (name: SwingState['used'][number]) => TemplateResult): TemplateResult | typeof nothing {
  if (!state.methods.includes('transit')) return nothing;
  const choices = (['bearing', 'marks'] as const).map((value) => ({ value, label: host.t(`swing.transitBy.${value}`) }));
  return html`${choiceView(host, 'transitBy', host.t('swing.transitBy'), state.transitBy, choices)}
    ${state.transitBy === 'marks'
      ? html`<div class="pair">${field('frontLatitude')} ${field('frontLongitude')}</div>
          <div class="pair">${field('rearLatitude')} ${field('rearLongitude')}</div>
          ${lineView(host, state)}`
      : field('transitBearing')}`;
}
