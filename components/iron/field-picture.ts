import { html, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { magneticDip, totalForce } from '../../core/iron/earth-field.js';
import type { EarthField } from '../../core/iron/earth-field.js';
import { formatAngle } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { microtesla } from './iron-words.js';

/** Units of the drawing for a microtesla: the same everywhere, so that places compare; typed giants are held. */
const SCALE = 2.4;
const LONGEST = 165;

function arrow(x: number, y: number, kind: string): TemplateResult {
  const length = Math.hypot(x, y);
  if (length < 1) return svg``;
  const [ux, uy] = [x / length, y / length];
  const head = `M${x - 8 * ux + 3.5 * uy} ${y - 8 * uy - 3.5 * ux} L${x} ${y} L${x - 8 * ux - 3.5 * uy} ${y - 8 * uy + 3.5 * ux}`;
  return svg`<g class=${kind}><line x1="0" y1="0" x2=${x} y2=${y}></line><path d=${head} fill="none"></path></g>`;
}

/** H towards magnetic north, Z down or up, and the total force between them, to scale. */
export function fieldPicture(host: LubberElement, field: EarthField, label: string): TemplateResult {
  const total = totalForce(field) / 1000;
  const angle = magneticDip(field);
  const scale = Math.min(SCALE, LONGEST / Math.max(total, 1));
  const [h, z] = [(field.h / 1000) * scale, (field.z / 1000) * scale];
  const up = z < 0;
  const height = Math.max(Math.abs(z), 26) + 44;
  const words = {
    h: microtesla(field.h),
    z: microtesla(Math.abs(field.z)),
    way: host.t(up ? 'iron.field.up' : 'iron.field.down'),
    total: microtesla(totalForce(field)),
    dip: angle === null ? '–' : formatAngle(angle),
  };
  return html`<figure class="field-figure">
    <svg part="picture" viewBox="-80 ${up ? -height + 22 : -22} 310 ${height}" role="img" aria-label=${`${label}: ${host.t('iron.field.picture', words)}`} class="field-picture">
      <line x1="-76" x2="226" y1="0" y2="0" class="level"></line>
      ${svg`<line x1=${h} x2=${h} y1="0" y2=${z} class="closing"></line><line x1="0" x2=${h} y1=${z} y2=${z} class="closing"></line>`}
      ${arrow(h, 0, 'force')}${arrow(0, z, 'force')}${arrow(h, z, 'total')}
      <text x=${Math.max(h + 8, 12)} y=${up ? 15 : -7}>H ${words.h}</text>
      <text x="-8" y=${z / 2 + 4} text-anchor="end">Z ${microtesla(field.z)}</text>
      <text x=${h + 8} y=${z + (up ? 4 : 4)}>${words.total}</text>
    </svg>
    <figcaption class="small soft">${host.t('iron.field.caption', words)}</figcaption>
  </figure>`;
}
