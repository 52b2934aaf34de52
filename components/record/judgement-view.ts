import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { choiceView } from '../shared/choice-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { adviceView } from './advice-view.js';
import { coefficientTable, judgementTables } from './judgement-tables.js';
import { headingChart, timeChart } from './record-charts.js';

function sinceText(host: LubberElement, { restart, observed }: RecordJudgement): string {
  if (!restart) return host.t('record.judged.all', { count: observed.length });
  return host.t('record.judged.since', {
    day: restart.instant.toISOString().slice(0, 10),
    event: host.t(`record.event.${restart.event}`),
    count: observed.length,
  });
}

/** Two charts share the row where there are two columns: drawn about as wide as they stand, their figures stay as large as the text. */
function chartWidth({ narrow, picture }: LubberElement['width']): number {
  if (narrow) return picture === 'narrow' ? 320 : 480;
  return picture === 'wide' ? 420 : 320;
}

/** What the book says of a compass: advice, charts, coefficients, and the way to a swing. */
export function judgementView(host: LubberElement, judgement: RecordJudgement, curve: DeviationCurve | null, onSwing: () => void, told: TemplateResult): TemplateResult {
  const { observed, comparisons, advice } = judgement;
  const width = chartWidth(host.width);
  return html`<h3>${host.t('record.advice')}</h3>
    ${comparisons.length === 0 && advice.length === 0 ? nothing : adviceView(host, advice)}
    <h3>${host.t('record.judged', { compass: host.t(`record.compass.${judgement.compass}`) })}</h3>
    <div class="no-print">
      ${choiceView(
        host,
        'compass',
        host.t('record.watched'),
        judgement.compass,
        (['standard', 'steering'] as const).map((value) => ({ value, label: host.t(`record.compass.${value}`) })),
      )}
    </div>
    ${observed.length === 0
      ? html`<p class="soft">${host.t('record.judged.none')}</p>`
      : html`<p class="soft small">${sinceText(host, judgement)} ${comparisons.length === 0 ? host.t('record.judged.nocard') : nothing}</p>
          <div class="charts">${headingChart(host, judgement, curve, width)} ${timeChart(host, judgement, width)}</div>
          ${judgementTables(host, judgement)} ${coefficientTable(host, judgement)}
          <p class="no-print"><button part="button" type="button" @click=${onSwing}>${host.t('record.swing')}</button></p>
          ${told}
          <p class="hint no-print">${host.t('record.swing.hint')}</p>`}`;
}
