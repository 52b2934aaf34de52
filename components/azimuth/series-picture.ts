import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { angleFromTo } from '../../core/angle/wrap.js';
import type { BearingSeries } from '../../core/sight/bearing-series.js';
import { formatTimeOfDay } from '../../core/time/instant.js';
import { formatError } from '../shared/figures.js';
import { RIBBON_WIDTH } from '../shared/horizon-ribbon.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';

const HEIGHT = 150;
const TOP = 12;
const BOTTOM = 116;
const LEFT = 58;
const RIGHT = 14;
/** So that honest scatter does not fill the picture, degrees. */
const LEAST_SPAN = 2;

/** A distance between lines that leaves at most four of them. */
function lineStep(span: number): number {
  return [0.5, 1, 2, 5, 10, 20].find((step) => span / step <= 4) ?? 45;
}

/** The error of each bearing at its time, the mean as a line, one that is struck as a cross. */
export function seriesPicture(host: LubberElement, series: BearingSeries): TemplateResult {
  const width = RIBBON_WIDTH[host.width.picture];
  const points = series.shots.flatMap(({ instant, error, struck }) =>
    error === null ? [] : [{ time: instant.getTime(), offset: angleFromTo(series.error, error), struck: struck !== null }],
  );
  const offsets = points.map(({ offset }) => offset);
  const middle = (Math.min(...offsets) + Math.max(...offsets)) / 2;
  const span = Math.max(LEAST_SPAN, Math.max(...offsets) - Math.min(...offsets)) * 1.15;
  const times = points.map(({ time }) => time);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const x = (time: number): number => LEFT + 12 + ((time - first) / Math.max(1, last - first)) * (width - LEFT - RIGHT - 24);
  const y = (offset: number): number => (TOP + BOTTOM) / 2 - ((offset - middle) / span) * (BOTTOM - TOP);
  const step = lineStep(span);
  const lowest = Math.ceil((series.error + middle - span / 2) / step);
  const lines: number[] = [];
  for (let line = lowest; line * step <= series.error + middle + span / 2; line += 1) lines.push(line * step);
  const summary = host.t('azimuth.series.picture', { mean: spokenError(series.error, host.t), kept: series.kept, all: series.shots.length });
  return html`<svg part="picture" viewBox="0 0 ${width} ${HEIGHT}" role="img" aria-label=${summary} class="ribbon">
    ${lines.map((error) => {
      const at = y(error - series.error);
      // The mean's own figure comes first.
      const figure = Math.abs(at - y(0)) < 14 ? nothing : svg`<text class="soft" x=${LEFT - 8} y=${at + 4} text-anchor="end">${formatError(error)}</text>`;
      return svg`<line x1=${LEFT} x2=${width - RIGHT} y1=${at} y2=${at} stroke="var(--line)"></line>${figure}`;
    })}
    <line x1=${LEFT} x2=${width - RIGHT} y1=${y(0)} y2=${y(0)} stroke="var(--accent)" stroke-width="1.6"></line>
    <text x=${LEFT - 8} y=${y(0) + 4} text-anchor="end">${formatError(series.error)}</text>
    ${points.map(({ time, offset, struck }) => {
      const [across, up] = [x(time), y(offset)];
      return struck
        ? svg`<path d="M${across - 4} ${up - 4} l8 8 m0 -8 l-8 8" stroke="var(--soft)" stroke-width="1.6" fill="none"></path>`
        : svg`<circle cx=${across} cy=${up} r="4" fill="var(--paper)" stroke="var(--body)" stroke-width="2"></circle>`;
    })}
    <text class="soft" x=${x(first)} y=${BOTTOM + 22}>${formatTimeOfDay(new Date(first))}</text>
    ${last > first ? svg`<text class="soft" x=${x(last)} y=${BOTTOM + 22} text-anchor="end">${formatTimeOfDay(new Date(last))}</text>` : nothing}
  </svg>`;
}
