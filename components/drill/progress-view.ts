import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import { isDone } from './drill-state.js';
import type { DrillState, ExerciseState } from './drill-state.js';

/** How an exercise stands, as a code of the catalogue. */
export function standing(each: ExerciseState, attempts: number): 'right' | 'partly' | 'wrong' | 'open' {
  if (!isDone(each, attempts)) return 'open';
  if (each.score === 1) return 'right';
  return each.score > 0 ? 'partly' : 'wrong';
}

const marks = { right: '✓', partly: '½', wrong: '×', open: '' };

/** The exercises of a set by number, each a way to it. */
export function progressView(host: LubberElement, state: DrillState, attempts: number, go: (index: number) => void): TemplateResult | typeof nothing {
  if (state.count < 2) return nothing;
  return html`<ol class="progress no-print" part="progress" aria-label=${host.t('drill.progress')}>
    ${state.exercises.map((each, index) => {
      const how = standing(each, attempts);
      return html`<li>
        <button part="button"
          type="button"
          class="${how} ${index === state.at ? 'here' : ''}"
          aria-current=${index === state.at ? 'step' : 'false'}
          aria-label=${[host.t('drill.number', { number: index + 1 }), host.t(`drill.standing.${how}`)].join(host.t('list.comma'))}
          @click=${() => go(index)}
        >
          ${index + 1}<span aria-hidden="true">${marks[how]}</span>
        </button>
      </li>`;
    })}
  </ol>`;
}
