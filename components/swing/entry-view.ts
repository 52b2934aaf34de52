import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { lockedMark } from '../shared/locked-mark.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { TypedColumn } from './grid-row.js';
import { gridView } from './grid-view.js';
import { otherRoundView } from './other-round-view.js';
import { settingsView } from './settings-view.js';
import { correctorsView, stageChoice } from './stage-view.js';
import { toolsView } from './tools-view.js';
import type { Tools } from './tools-view.js';
import type { WorkedRound } from './worked-rounds.js';

interface Entry extends Tools {
  /** The round that is shown, and the other where there are two. */
  readonly round: WorkedRound;
  readonly other: WorkedRound | null;
  readonly columns: readonly TypedColumn[];
}

/** All that is entered: settings, readings, correctors; on paper those of the other round too. */
export function entryView(host: LubberElement, entry: Entry): TemplateResult {
  const { round, other, desk, columns, ticked } = entry;
  const { state, worked } = round;
  const locked = host.isLocked('rows');
  const title = state.two ? `${host.t('swing.grid.title')}${host.t('list.comma')}${host.t(`swing.stage.${state.stage}`)}` : host.t('swing.grid.title');
  const beside = other ? otherRoundView(host, other.state, other.worked) : nothing;
  const before = other?.state.stage === 'found';
  return html`<div class="entry-side">
    ${settingsView(host, state)} ${stageChoice(host, state)} ${before ? beside : nothing}
    <h3>${title}${lockedMark(host, 'rows')}</h3>
    ${gridView(host, { state, worked, columns, mixed: ticked.mixed, typing: desk.typing, locked }, desk)} ${locked ? nothing : toolsView(host, entry)}
    ${correctorsView(host, state, desk)} ${before ? nothing : beside}
  </div>`;
}
