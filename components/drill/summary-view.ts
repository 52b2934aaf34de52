import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Exercise } from '../../core/drill/exercise.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { ScoreDetail } from '../shared/score-event.js';
import type { DrillState } from './drill-state.js';
import { standing } from './progress-view.js';

const percent = (part: number): string => `${Math.round(part * 100)} %`;

/** The end of a set: the score, whether it will do, and how each exercise went. */
export function summaryView(
  host: LubberElement,
  { exercises, state, score, passMark, attempts }: { exercises: readonly Exercise[]; state: DrillState; score: ScoreDetail; passMark: number; attempts: number },
  buttons: TemplateResult,
): TemplateResult {
  const told = score.complete ? (score.passed ? 'drill.passed' : 'drill.failed') : 'drill.unfinished';
  return html`<div tabindex="-1" id="summary">
      <p class="answer" part="answer"><bdi dir="ltr">${percent(score.scaled)}</bdi></p>
      <p>${host.t(told, { mark: percent(passMark) })}</p>
    </div>
    <table part="table" class="summary">
      <thead>
        <tr>
          <th scope="col">${host.t('drill.number.short')}</th>
          <th scope="col">${host.t('drill.kind.column')}</th>
          <th scope="col">${host.t('drill.outcome')}</th>
          <th scope="col" class="figure">${host.t('drill.tries')}</th>
        </tr>
      </thead>
      <tbody>
        ${exercises.map((exercise, index) => {
          const each = state.exercises[index];
          if (!each) return nothing;
          return html`<tr>
            <td>${index + 1}</td>
            <td>${host.t(`drill.kind.${exercise.kind}`)}</td>
            <td>${host.t(`drill.standing.${standing(each, attempts)}`)}</td>
            <td class="figure">${each.tries}</td>
          </tr>`;
        })}
      </tbody>
    </table>
    <div class="row after no-print">${buttons}</div>`;
}
