import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import type { CardComparison } from '../../core/record/check-against-card.js';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';
import { degreeScale, spanScale } from './chart-scale.js';
import type { Scale } from './chart-scale.js';

/** More points than this only blot; the newest are drawn. */
const MOST_POINTS = 200;
const HEIGHT = 220;
const LEFT = 46;
const TOP = 14;
const BOTTOM = HEIGHT - 26;

const errorMark = (value: number): string => formatError(value, Number.isInteger(value) ? 0 : 1);

function grid(y: Scale, width: number): TemplateResult<2>[] {
  return y.marks.map(
    (mark) => svg`<line x1=${LEFT} x2=${width} y1=${y(mark)} y2=${y(mark)} stroke=${mark === 0 ? 'var(--edge)' : 'var(--line)'}></line>
      <text class="soft" x=${LEFT - 6} y=${y(mark) + 4} text-anchor="end">${errorMark(mark)}</text>`,
  );
}

const dot = (x: number, y: number, newest: boolean): TemplateResult<2> =>
  svg`<circle cx=${x} cy=${y} r="3.2" fill=${newest ? 'var(--accent)' : 'var(--paper)'} stroke="var(--accent)" stroke-width="1.4"></circle>`;

function cardLine(curve: DeviationCurve, x: (heading: number) => number, y: Scale): TemplateResult<2> {
  let path = '';
  for (let heading = 0; heading <= 360; heading += 5) {
    const deviation = curve.at(heading);
    if (deviation !== null) path += `${path === '' ? 'M' : 'L'}${x(heading)} ${y(deviation)}`;
  }
  return svg`<path d=${path} fill="none" stroke="var(--ink)" stroke-width="1.6"></path>`;
}

/** Deviation found by heading, with the card as a line; the last ten filled. */
export function headingChart(host: LubberElement, judgement: RecordJudgement, curve: DeviationCurve | null, width: number): TemplateResult {
  const points = judgement.observed.slice(-MOST_POINTS);
  const found = points.map(({ deviation }) => deviation);
  const onCard = curve ? Array.from({ length: 36 }, (_, place) => curve.at(place * 10) ?? 0) : [];
  const y = degreeScale([...found, ...onCard], TOP, BOTTOM);
  const x = spanScale(0, 360, LEFT + 4, width - 8);
  const text = host.t('record.chart.heading.text', {
    count: points.length,
    least: spokenError(Math.min(...found), host.t),
    most: spokenError(Math.max(...found), host.t),
  });
  return html`<figure>
    <h4>${host.t('record.chart.heading')}</h4>
    <svg part="picture" viewBox="0 0 ${width} ${HEIGHT}" role="img" aria-label=${text}>
      ${grid(y, width)}
      ${[0, 90, 180, 270, 360].map((heading) => svg`<text class="soft" x=${x(heading)} y=${HEIGHT - 6} text-anchor=${heading === 0 ? 'start' : heading === 360 ? 'end' : 'middle'}>${String(heading % 360).padStart(3, '0')}°</text>`)}
      ${curve ? cardLine(curve, x, y) : nothing}
      ${points.map(({ heading, deviation }, place) => dot(x(heading), y(deviation), place >= points.length - 10))}
    </svg>
    <figcaption>○ ${host.t('record.chart.found')}, ● ${host.t('record.chart.newest')}${curve ? html`, — ${host.t('record.chart.card')}` : nothing}</figcaption>
  </figure>`;
}

function timeText(host: LubberElement, { trend }: RecordJudgement): string {
  if (!trend) return '';
  const mean = spokenError(trend.mean, host.t);
  return trend.perMonth === null
    ? host.t('record.chart.time.flat', { mean })
    : host.t('record.chart.time.text', { mean, change: spokenError(trend.perMonth, host.t) });
}

/** Difference from the card by time, with the line through it where there is one. */
export function timeChart(host: LubberElement, judgement: RecordJudgement, width: number): TemplateResult | typeof nothing {
  const points: readonly CardComparison[] = judgement.comparisons.slice(-MOST_POINTS);
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last) return nothing;
  const times = points.map(({ observed }) => observed.instant.getTime());
  const y = degreeScale(points.map(({ difference }) => difference), TOP, BOTTOM);
  const x = spanScale(times[0] as number, times[times.length - 1] as number, LEFT + 8, width - 8);
  const day = (comparison: CardComparison): string => comparison.observed.instant.toISOString().slice(0, 10);
  // The trend is of all comparisons; where not all are drawn its line would begin elsewhere.
  const line = points.length === judgement.comparisons.length ? (judgement.trend?.line ?? null) : null;
  return html`<figure>
    <h4>${host.t('record.chart.time')}</h4>
    <svg part="picture" viewBox="0 0 ${width} ${HEIGHT}" role="img" aria-label=${timeText(host, judgement)}>
      ${grid(y, width)}
      <text class="soft" x=${LEFT + 4} y=${HEIGHT - 6}>${day(first)}</text>
      <text class="soft" x=${width - 4} y=${HEIGHT - 6} text-anchor="end">${day(last)}</text>
      ${line
        ? svg`<line x1=${x(times[0] as number)} x2=${x(times[times.length - 1] as number)} y1=${y(line.from)} y2=${y(line.to)} stroke="var(--ink)" stroke-width="1.4" stroke-dasharray="5 4"></line>`
        : nothing}
      ${points.map(({ difference }, place) => dot(x(times[place] as number), y(difference), place >= points.length - 10))}
    </svg>
    <figcaption>○ ${host.t('record.chart.difference')}, ● ${host.t('record.chart.newest')}${line ? html`, – – ${host.t('record.chart.trend')}` : nothing}</figcaption>
  </figure>`;
}
