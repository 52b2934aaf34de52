import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { cautionsView } from '../shared/caution-view.js';
import { correctorsTable } from '../shared/correctors-table.js';
import { deviationChart } from '../shared/deviation-chart.js';
import type { ChartContent } from '../shared/deviation-chart.js';
import { deviationSummary } from '../shared/deviation-summary.js';
import { formatAngle, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import { signatureLines } from '../shared/signature-lines.js';
import type { CardContent, CardResult, Particulars } from './card-content.js';
import { figuresView } from './card-figures.js';

type Format = 'a4' | 'pocket';

/** A particular with its name; where nothing is known there is a line to write on. */
function entry(label: string, value: string): TemplateResult {
  return html`<div>
    <dt>${label}</dt>
    <dd class=${value ? '' : 'blank'}>${value ? html`<bdi>${value}</bdi>` : html`<span class="spoken">–</span>`}</dd>
  </div>`;
}

const microtesla = (value: number | null): string => (value === null ? '' : `${formatNumber(value, 1)} µT`);

function particularsView(host: LubberElement, particulars: Particulars, format: Format): TemplateResult {
  const { vessel, compassName, serial, place, date, horizontal, vertical } = particulars;
  const t = host.t;
  return html`<dl class="particulars">
    ${entry(t('card.vessel'), vessel)} ${entry(t('card.compassName'), serial && format === 'pocket' ? `${compassName} ${serial}`.trim() : compassName)}
    ${format === 'a4' ? entry(t('card.serial'), serial) : nothing} ${entry(t('card.place'), place)} ${entry(t('card.date'), date)}
    ${format === 'a4' ? html`${entry(t('card.horizontal'), microtesla(horizontal))} ${entry(t('card.vertical'), microtesla(vertical))}` : nothing}
  </dl>`;
}

function coefficientsText({ card }: CardResult): string {
  if (card.kind === 'table') return '';
  const decimals = card.kind === 'exact' ? 3 : 1;
  const unit = card.kind === 'exact' ? '' : '°';
  const { A, B, C, D, E } = card.coefficients;
  return Object.entries({ A, B, C, D, E })
    .map(([name, value]) => `${name}\u00a0${value > 0 ? '+' : ''}${formatNumber(value, decimals)}${unit}`)
    .join('  ');
}

function ageText(host: LubberElement, { ageMonths }: CardResult): string {
  if (ageMonths === null || ageMonths < 0) return '';
  const few = ['card.age.none', 'card.age.one'][ageMonths];
  return few ? host.t(few) : host.t('card.age', { months: ageMonths });
}

/** On a screen as large as there is room; on paper always the same. */
function chartView(host: LubberElement, content: ChartContent, summary: string): TemplateResult {
  const { narrow, close, picture } = host.width;
  const size = narrow ? picture : close ? 'wide' : 'middle';
  return html`<div class=${size === 'middle' ? '' : 'paper-only'}>${deviationChart(content, summary, 'middle')}</div>
    ${size === 'middle' ? nothing : html`<div class="no-print">${deviationChart(content, summary, size)}</div>`}`;
}

/** The card as it is printed: A4 with everything, or a pocket card with the figures alone. */
export function cardPaper(host: LubberElement, { result, curve }: CardContent, format: Format): TemplateResult {
  const { particulars, rows, check, limit } = result;
  const t = host.t;
  const chart = { name: t('card.title'), at: (heading: number) => curve.at(heading) };
  const coefficients = coefficientsText(result);
  const verdict = t(check.withinLimit ? 'card.within' : 'card.exceeds', { limit: formatAngle(limit.largest, 0) });
  // Forty lines need smaller type on a pocket card than twenty-four.
  return html`<article class="paper ${format} ${rows.length > 24 ? 'dense' : ''}" part="paper" aria-label=${t('card.title')}>
    <h3>${t('card.title')}</h3>
    ${particularsView(host, particulars, format)} ${figuresView(host, rows)}
    <p class="verdict ${check.withinLimit ? '' : 'exceeds'}">${sentences(t, verdict, ageText(host, result))}</p>
    ${format === 'a4'
      ? html`${chartView(host, { curves: [chart], limit: limit.largest }, deviationSummary(chart, t))}
          ${coefficients ? html`<p class="coefficients"><bdi dir="ltr">${coefficients}</bdi></p>` : nothing} ${correctorsTable(host, particulars.correctors, t('card.correctors'))}`
      : nothing}
    ${particulars.remarks || format === 'a4' ? html`<dl class="remarks">${entry(t('card.remarks'), particulars.remarks)}</dl>` : nothing}
    ${format === 'a4' ? cautionsView(host, result.cautions.filter(({ code }) => code !== 'beyond-limit')) : nothing}
    <p class="standing small soft">${t(format === 'a4' ? 'card.standing' : 'card.standing.short')}</p>
    ${signatureLines(host, format === 'a4' ? ['card.sign.adjuster', 'card.sign.master', 'card.sign.dated'] : ['card.sign.adjuster', 'card.sign.dated'])}
  </article>`;
}
