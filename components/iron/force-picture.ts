import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { compassField } from '../../core/iron/poisson.js';
import { needle } from '../../core/iron/needle.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { BenchResult } from './bench-result.js';

const SIZE = 190;
/** Right of it the name of that side, clear of the ellipse. */
const BESIDE = 58;

/**
 * The force on the needle in the ship's axes, bow upwards. As she turns once round its end
 * draws an ellipse; the compass stands in the origin. While it is inside, the needle goes
 * round with the earth; outside, the ship leads it; on the line, nothing does.
 */
export function forcePicture(host: LubberElement, result: BenchResult): TemplateResult {
  const { iron, field, heading, heel } = result;
  const at = (magneticHeading: number): { x: number; y: number } => compassField(iron, field, magneticHeading, heel);
  const points = Array.from({ length: 72 }, (_, index) => at(index * 5));
  const far = Math.max(1, ...points.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
  const scale = (SIZE / 2 - 22) / far;
  const place = ({ x, y }: { x: number; y: number }): string => `${(y * scale).toFixed(1)} ${(-x * scale).toFixed(1)}`;
  const now = at(heading);
  const { lostOn } = result.needle;
  const { behaviour } = needle(iron, field, heel);
  return html`<svg part="picture" viewBox="${-SIZE / 2} ${-SIZE / 2} ${SIZE + BESIDE} ${SIZE}" role="img" aria-label=${host.t(`iron.force.${behaviour}`)} class="force-picture">
    <line x1=${-SIZE / 2 + 14} x2=${SIZE / 2 - 14} y1="0" y2="0" class="rule"></line>
    <line y1=${-SIZE / 2 + 14} y2=${SIZE / 2 - 14} x1="0" x2="0" class="rule"></line>
    <path d="M${points.map(place).join('L')}Z" class="ellipse"></path>
    ${svg`<path d="M0 0L${place(now)}" class="now"></path>`}
    ${svg`<circle cx=${(now.y * scale).toFixed(1)} cy=${(-now.x * scale).toFixed(1)} r="4" class="end"></circle>`}
    ${lostOn.length > 0 ? svg`<path d="M-7 -7L7 7M-7 7L7 -7" class="lost"></path>` : nothing}
    <circle cx="0" cy="0" r="3.5" class="compass"></circle>
    <text class="soft" x="0" y=${-SIZE / 2 + 10} text-anchor="middle">${host.t('iron.force.ahead')}</text>
    <text class="soft" x=${SIZE / 2 - 10} y="4">${host.t('iron.force.starboard')}</text>
  </svg>`;
}

/** Directive force over H by magnetic heading, and its mean towards north, λ. */
export function directivePicture(host: LubberElement, result: BenchResult): TemplateResult {
  const { curve, field, exact } = result;
  if (field.h === 0) return html``;
  const [width, height] = [300, 150];
  const most = Math.max(1.2, ...curve.map(({ directiveForce }) => directiveForce / field.h));
  const limit = [1.2, 1.5, 2, 3, 5, 10, 20, 50, 100].find((each) => most <= each) ?? most;
  const x = (heading: number): number => 40 + (heading / 360) * (width - 50);
  const y = (share: number): number => height - 24 - (share / limit) * (height - 36);
  const closed = [...curve.map(({ magneticHeading, directiveForce }) => [magneticHeading, directiveForce] as const), [360, curve[0]?.directiveForce ?? 0] as const];
  const path = closed.map(([heading, force]) => `${x(heading).toFixed(1)} ${y(force / field.h).toFixed(1)}`).join('L');
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  return html`<svg part="picture" viewBox="0 0 ${width} ${height}" role="img" aria-label=${host.t('iron.directive.picture')} class="directive">
    ${[0, limit / 2, limit].map(
      (share) => svg`<line class="rule" x1="40" x2=${width - 10} y1=${y(share)} y2=${y(share)}></line>
        <text class="soft" x="35" y=${y(share) + 4} text-anchor="end">${percent(share)}</text>`,
    )}
    ${[0, 90, 180, 270, 360].map(
      (heading) => svg`<text class="soft" x=${x(heading)} y=${height - 7} text-anchor="middle">${String(heading).padStart(3, '0')}°</text>`,
    )}
    ${exact.lambda > 0 && exact.lambda <= limit
      ? svg`<line class="mean" x1="40" x2=${width - 10} y1=${y(exact.lambda)} y2=${y(exact.lambda)}></line>
          <text x=${width - 7} y=${y(exact.lambda) + 4}>λ</text>`
      : nothing}
    <path d="M${path}" class="whole"></path>
  </svg>`;
}
