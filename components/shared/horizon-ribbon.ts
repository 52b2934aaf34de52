import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { angleFromTo, wrap360 } from '../../core/angle/wrap.js';
import { formatBearing, formatError } from './figures.js';
import type { LubberElement } from './lubber-element.js';

export interface RibbonMark {
  /** Direction, degrees. */
  readonly bearing: number;
  /** What it is, written above its figure. */
  readonly label: string;
  /** The observed body, a compass reading, or another north's reading. */
  readonly kind: 'body' | 'reading';
  /** How far the body's disc stands above the horizon, in its own diameters, centre counted. */
  readonly height?: number;
}

/** Width of the drawing, units that are pixels at full size: a narrow widget gets a narrow drawing, not small type. */
export const RIBBON_WIDTH = { wide: 520, middle: 400, narrow: 300 } as const;
const HORIZON = 104;
const MARGIN = 44;

/** Tick distance that leaves room for the figures. */
function tickStep(span: number, most: number): number {
  return [1, 2, 5, 10, 15, 30].find((step) => span / step <= most) ?? 45;
}

/**
 * The piece of horizon between two directions, to scale: where the body truly is, where
 * the compass put it, and the error as the arrow from one to the other.
 */
export function horizonRibbon(host: LubberElement, marks: readonly [RibbonMark, RibbonMark], errorLabel: string, summary: string, width: number): TemplateResult {
  const [first, second] = marks;
  const turn = angleFromTo(second.bearing, first.bearing);
  const middle = second.bearing + turn / 2;
  const span = Math.max(12, Math.abs(turn) * 1.25);
  const scale = (width - 2 * MARGIN) / span;
  const x = (bearing: number): number => width / 2 + angleFromTo(wrap360(middle), bearing) * scale;
  const step = tickStep(span, width / 32);
  const from = Math.ceil((middle - span / 2) / step) * step;
  const ticks: number[] = [];
  for (let bearing = from; bearing <= middle + span / 2; bearing += step) ticks.push(bearing);
  const figureEvery = span / step > width / 65 ? 2 : 1;
  const markX = marks.map((mark) => x(mark.bearing));
  const [bodyX = 0, readingX = 0] = markX;
  // Two labels closer than their own width stand on two levels; in a narrow drawing the margins push them together.
  const close = Math.abs(bodyX - readingX) < (width < RIBBON_WIDTH.wide ? 200 : 150);
  const head = bodyX > readingX ? -8 : 8;
  // The room is kept from the start; the lines come once the answer is on the screen.
  return html`<svg part="picture" viewBox="0 0 ${width} 150" role="img" aria-label=${summary} class="ribbon">
    ${host.closed.view(false, () => svg`<line x1="6" x2=${width - 6} y1=${HORIZON} y2=${HORIZON} stroke="var(--ink)" stroke-width="1.4"></line>
      ${ticks.map((bearing) => {
        const long = Math.round(bearing / step) % figureEvery === 0;
        // Not by x(): a wide ribbon runs past the opposite direction.
        const at = width / 2 + (bearing - middle) * scale;
        return svg`<line x1=${at} x2=${at} y1=${HORIZON} y2=${HORIZON + (long ? 9 : 5)} stroke="var(--soft)"></line>
          ${long ? svg`<text class="soft" x=${at} y=${HORIZON + 24} text-anchor="middle">${formatBearing(bearing, 0)}</text>` : nothing}`;
      })}
      ${marks.map((mark, index) => {
        const at = markX[index] ?? 0;
        const colour = mark.kind === 'body' ? 'var(--body)' : 'var(--accent)';
        const labelY = close && index === 1 ? 30 : 14;
        const anchor = at < 70 ? 'start' : at > width - 70 ? 'end' : 'middle';
        return svg`<line x1=${at} x2=${at} y1=${HORIZON} y2=${labelY + 6} stroke=${colour} stroke-dasharray="2 3"></line>
          <text x=${at} y=${labelY} text-anchor=${anchor}>${formatBearing(mark.bearing)} ${mark.label}</text>
          ${
            mark.kind === 'body'
              ? svg`<circle cx=${at} cy=${HORIZON - (mark.height ?? 0) * 22} r="11" fill="var(--paper)" stroke=${colour} stroke-width="2"></circle>`
              : svg`<line x1=${at} x2=${at} y1=${HORIZON} y2=${HORIZON - 34} stroke=${colour} stroke-width="2"></line>`
          }`;
      })}
      ${
        Math.abs(bodyX - readingX) > 3
          ? svg`<path d="M${readingX} 56 H${bodyX}" stroke="var(--ink)" fill="none"></path>
            <path d="M${bodyX + head} 52 L${bodyX} 56 L${bodyX + head} 60" stroke="var(--ink)" fill="none"></path>`
          : nothing
      }
      <text x=${(bodyX + readingX) / 2} y="50" text-anchor="middle">${errorLabel} <tspan>${formatError(turn)}</tspan></text>`)}
  </svg>`;
}
