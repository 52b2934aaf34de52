import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { swungCompasses } from '../../core/swing/adjusted-swing.js';
import type { SwungCompass } from '../../core/swing/adjusted-swing.js';
import { anyCorrector } from '../../core/deviation/corrector-states.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import { choiceView } from '../shared/choice-view.js';
import { correctorsEntry } from '../shared/correctors-entry.js';
import { correctorsTable } from '../shared/correctors-table.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { GridDesk } from './grid-desk.js';
import { stageNames } from './swing-sheet.js';
import type { SwingState } from './swing-state.js';

/** Which round of the swing is shown; nothing in a swing of one round. */
export function stageChoice(host: LubberElement, { two, stage }: SwingState): TemplateResult | typeof nothing {
  if (!two) return nothing;
  const choices = stageNames.map((value) => ({ value, label: host.t(`swing.stage.${value}`) }));
  return html`<div class="stage no-print">${choiceView(host, 'stage', host.t('swing.stage'), stage, choices)}</div>`;
}

/** What correctors are called where there are several lists of them. */
export function correctorsTitle(host: LubberElement, { two, stage, steering }: SwingState, compass: SwungCompass): string {
  const parts = [...(steering ? [host.t(`swing.compass.${compass}`)] : []), ...(two ? [host.t(`swing.stage.${stage}`)] : [])];
  return parts.length > 0 ? host.t('swing.named', { name: host.t('card.correctors'), what: parts.join(host.t('list.comma')) }) : host.t('card.correctors');
}

function compassCorrectors(host: LubberElement, state: SwingState, desk: GridDesk, compass: SwungCompass): TemplateResult {
  const { correctors } = state;
  const title = correctorsTitle(host, state, compass);
  const locked = host.isLocked('rows') || host.isLocked('correctors');
  const take = (changed: Correctors, part: string): void => desk.take({ correctors: { ...correctors, [compass]: changed } }, `${compass}-${part}`);
  // Fifteen fields and as many choices, of which a reading typed changes none.
  return html`<details class="no-print" id="correctors-${compass}">
      <summary part="summary">${title}</summary>
      ${guard([correctors, locked, title, host.page.language], () => correctorsEntry(host, correctors[compass], locked, take))}
    </details>
    ${anyCorrector(correctors[compass]) ? html`<div class="paper-only">${correctorsTable(host, correctors[compass], title)}</div>` : nothing}`;
}

/** How the correctors stood while the readings were taken, for each compass that was read. */
export function correctorsView(host: LubberElement, state: SwingState, desk: GridDesk): TemplateResult {
  const compasses = swungCompasses.filter((compass) => compass === 'standard' || state.steering);
  return html`<div class="binnacles">${compasses.map((compass) => html`<div>${compassCorrectors(host, state, desk, compass)}</div>`)}</div>`;
}
