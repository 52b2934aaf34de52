import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';
import { wrap180 } from '../../core/angle/wrap.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { Conversion } from '../../core/sight/conversion.js';

interface Ray {
  readonly direction: number;
  readonly label: string;
  readonly length: number;
  readonly className: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

const end = (direction: number, length: number): { x: number; y: number } => ({ x: length * sinDegrees(direction), y: 0 - length * cosDegrees(direction) });

/** Where the text of a ray stands: above a middle one, beside the end of another. */
function textPlace({ direction, length, anchor }: Ray): { x: number; y: number } {
  const at = end(direction, length);
  if (anchor === 'middle') return { x: at.x, y: at.y < 0 ? at.y - 7 : at.y + 16 };
  return { x: at.x + (anchor === 'start' ? 7 : -7), y: at.y + 4 };
}

/** The three norths: the middle one is the longest, so that each name finds room at its own side. */
function northRays(host: LubberElement, variation: number, error: number): Ray[] {
  const norths = [
    { direction: 0, name: 'true' },
    { direction: variation, name: 'magnetic' },
    { direction: error, name: 'compass' },
  ].sort((a, b) => a.direction - b.direction);
  const anchors = ['end', 'middle', 'start'] as const;
  return norths.map(({ direction, name }, rank) => ({
    direction,
    label: host.t(`conversion.north.${name}`),
    length: rank === 1 ? 112 : 88,
    className: name,
    anchor: anchors[rank] ?? 'middle',
  }));
}

function sideOf(direction: number): Ray['anchor'] {
  const turn = wrap180(direction);
  return Math.abs(turn) < 12 || Math.abs(turn) > 168 ? 'middle' : turn > 0 ? 'start' : 'end';
}

/** A ray that reaches past the names of others close to it. */
function placed(direction: number, label: string, className: string, others: readonly Ray[]): Ray {
  const close = others.filter((other) => Math.abs(wrap180(other.direction - direction)) < 25);
  const length = Math.max(72, ...close.map((other) => other.length + 32));
  return { direction, label, length, className, anchor: sideOf(direction) };
}

function lineOf({ direction, length, className }: Ray): SVGTemplateResult {
  const at = end(direction, length);
  return svg`<line x1="0" y1="0" x2=${at.x} y2=${at.y} class=${className}></line>`;
}

function nameOf(ray: Ray): SVGTemplateResult {
  const text = textPlace(ray);
  return svg`<text x=${text.x} y=${text.y} text-anchor=${ray.anchor} class="soft">${ray.label}</text>`;
}

/** True, magnetic and compass north with the direction itself, at their true angles, true north upwards. */
export function northsPicture(host: LubberElement, result: Conversion): TemplateResult | typeof nothing {
  const { values, variation, compassError, head, kind } = result;
  if (values.true === null || variation === null || compassError === null) return nothing;
  const rays = northRays(host, variation, compassError);
  rays.push(placed(values.true, host.t(`conversion.kind.${kind}`), 'direction', rays));
  if (kind === 'bearing' && head.true !== null) rays.push(placed(head.true, host.t('conversion.head'), 'head', rays));
  const heights = rays.flatMap((ray) => [end(ray.direction, ray.length).y, textPlace(ray).y]);
  const top = Math.min(...heights) - 14;
  const bottom = Math.max(8, ...heights) + 8;
  return html`<svg part="picture" viewBox="-150 ${top} 300 ${bottom - top}" role="img" aria-label=${host.t('conversion.norths')} class="norths">
    <circle r="3" fill="var(--ink)"></circle>
    ${rays.map(lineOf)} ${rays.map(nameOf)}
  </svg>`;
}
