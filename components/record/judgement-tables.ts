import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { errorInColumn } from '../shared/error-parts.js';
import { formatAngle, formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { signedText } from '../shared/signed-text.js';

const MOST_ROWS = 200;

type Cell = string | TemplateResult;

interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

function table({ caption, head, rows }: Table): TemplateResult {
  const cell = (text: Cell, place: number): TemplateResult =>
    place === 0 ? html`<th scope="row" class="nowrap"><bdi dir="ltr">${text}</bdi></th>` : html`<td class="figure"><bdi dir="ltr">${text}</bdi></td>`;
  return html`<div class="scroll" role="group" aria-label=${caption}>
    <table part="table">
      <caption class="spoken">${caption}</caption>
      <thead><tr>${head.map((text, place) => html`<th scope="col" class=${place === 0 ? '' : 'figure'}>${text}</th>`)}</tr></thead>
      <tbody>${rows.map((row) => html`<tr>${row.map(cell)}</tr>`)}</tbody>
    </table>
  </div>`;
}

const orDash = (value: number | null): Cell => (value === null ? '–' : errorInColumn(value));

/** What the charts show, in numbers: by sector, and observation by observation. */
export function judgementTables(host: LubberElement, judgement: RecordJudgement): TemplateResult {
  const byNumber = new Map(judgement.comparisons.map((comparison) => [comparison.observed.number, comparison]));
  return html`<details class="no-print">
    <summary part="summary">${host.t('record.numbers')}</summary>
    ${table({
      caption: host.t('record.chart.heading'),
      head: ['sector', 'count', 'mean'].map((key) => host.t(`record.numbers.${key}`)),
      rows: judgement.byHeading.map(({ heading, count, mean }) => [formatBearing(heading, 0), String(count), orDash(mean)]),
    })}
    ${table({
      caption: host.t('record.chart.time'),
      head: ['day', 'head', 'found', 'card', 'difference'].map((key) => host.t(`record.numbers.${key}`)),
      rows: judgement.observed.slice(-MOST_ROWS).map(({ number, instant, heading, deviation }) => {
        const comparison = byNumber.get(number);
        return [
          instant.toISOString().slice(0, 10),
          formatBearing(heading),
          errorInColumn(deviation),
          orDash(comparison?.cardDeviation ?? null),
          orDash(comparison?.difference ?? null),
        ];
      }),
    })}
  </details>`;
}

/** The coefficients of the last observations beside the card's. */
export function coefficientTable(host: LubberElement, { refit }: RecordJudgement): TemplateResult | typeof nothing {
  if (refit.fit.determined.length === 0) return nothing;
  const caption = host.t('record.coefficients', { count: refit.count });
  return html`<h3>${caption}</h3>
    ${table({
      caption,
      head: ['name', 'found', 'card', 'change'].map((key) => host.t(`record.coefficients.${key}`)),
      rows: refit.coefficients.map(({ name, found, doubt, card, change, significant }) => [
        name,
        found === null ? host.t('record.coefficients.none') : `${signedText(found)}${doubt === null ? '' : ` ±\u00a0${formatAngle(doubt)}`}`,
        card === null ? '–' : signedText(card),
        change === null ? '–' : `${significant ? '▲ ' : ''}${signedText(change)}`,
      ]),
    })}
    ${refit.coefficients.some(({ significant }) => significant) ? html`<p class="hint">▲ ${host.t('record.coefficients.significant')}</p>` : nothing}`;
}
