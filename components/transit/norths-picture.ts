import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';

export interface North {
  /** Direction of this north from true north, degrees, east positive. */
  readonly direction: number;
  readonly label: string;
  readonly tone: 'ink' | 'soft' | 'accent';
}

const SIZE = 240;
const CENTRE = SIZE / 2;
const ARM = 84;

function end(direction: number, length: number): { x: number; y: number } {
  return { x: CENTRE + length * sinDegrees(direction), y: CENTRE - length * cosDegrees(direction) };
}

function arrow({ direction, label, tone }: North, level: number): TemplateResult<2> {
  const tip = end(direction, ARM + level * 12);
  const left = end(direction - 4, ARM + level * 12 - 9);
  const right = end(direction + 4, ARM + level * 12 - 9);
  const anchor = Math.abs(tip.x - CENTRE) < 12 ? 'middle' : tip.x > CENTRE ? 'start' : 'end';
  const colour = `var(--${tone})`;
  return svg`<path d="M${CENTRE} ${CENTRE} L${tip.x} ${tip.y} M${left.x} ${left.y} L${tip.x} ${tip.y} L${right.x} ${right.y}" stroke=${colour} fill="none" stroke-width="1.5"></path>
    <text class="soft" x=${tip.x} y=${tip.y - 5} text-anchor=${anchor}>${label}</text>`;
}

/** The norths and the line of the marks as they lie about the ship, to scale, true north up. */
export function northsPicture(norths: readonly North[], trueBearing: number | null, lineLabel: string, summary: string): TemplateResult {
  const far = trueBearing === null ? null : end(trueBearing, 100);
  const near = trueBearing === null ? null : end(trueBearing, 62);
  return html`<svg viewBox="-20 -22 ${SIZE + 40} ${SIZE + 30}" role="img" aria-label=${summary} class="norths" dir="ltr">
    ${
      far && near
        ? svg`<path d="M${CENTRE} ${CENTRE} L${far.x} ${far.y}" stroke="var(--body)" stroke-dasharray="2 3" fill="none"></path>
          <path d="M${far.x - 5} ${far.y + 4} h10 l-5 -9 z" stroke="var(--body)" fill="var(--paper)" stroke-width="1.5"></path>
          <path d="M${near.x - 5} ${near.y + 4} h10 l-5 -9 z" stroke="var(--body)" fill="var(--paper)" stroke-width="1.5"></path>
          <text x=${far.x} y=${far.y + (far.y > CENTRE ? 20 : -10)} text-anchor="middle">${lineLabel}</text>`
        : nothing
    }
    ${norths.map(arrow)}
    <circle cx=${CENTRE} cy=${CENTRE} r="3.5" fill="var(--ink)"></circle>
  </svg>`;
}
