import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { exerciseKinds, levels } from '../../core/drill/exercise.js';
import { choiceView, selectView } from '../shared/choice-view.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** What to practise, where the page has not said it. */
export function setupView(host: LubberElement, kind: string, level: number, draw: () => void): TemplateResult {
  const label = (each: string): string => host.t(`drill.kind.${each}`);
  return html`<div class="setup no-print">
    ${selectView(host, 'setup-kind', host.t('drill.kind'), kind || 'all', [
      { label: host.t('drill.kinds.mixed'), options: [{ value: 'all', label: label('all') }] },
      { label: host.t('drill.kinds.one'), options: exerciseKinds.map((value) => ({ value, label: label(value) })) },
    ])}
    ${choiceView(
      host,
      'setup-level',
      host.t('drill.level'),
      String(level),
      levels.map((value) => ({ value: String(value), label: host.t(`drill.level.${value}`) })),
    )}
    <button part="button" type="button" ?disabled=${host.isDisabled} @click=${draw}>${host.t('drill.new')}</button>
  </div>`;
}
