import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import { microtesla } from '../shared/field-elements-view.js';
import { formatAngle } from '../shared/figures.js';

/** Units of the drawing for a microtesla: the same for every place, so that places can be compared. */
const SCALE = { wide: 3.2, narrow: 2.3 } as const;
const LEFT = 100;
const WIDTH = { wide: 350, narrow: 296 } as const;
const MARGIN = 30;
/** A level line shorter than its label: the label starts where it does. */
const ROOM = 100;
const BAR = 10;
/** Below this dip, degrees, the total force lies so flat that its label stands below it. */
const FLAT = 30;

function arrow(x1: number, y1: number, x2: number, y2: number, kind: string): TemplateResult<2> | typeof nothing {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < 1) return nothing;
  const size = Math.min(8, length / 2);
  const [ux, uy] = [((x2 - x1) / length) * size, ((y2 - y1) / length) * size];
  const [ax, ay] = [x2 - ux - uy * 0.4, y2 - uy + ux * 0.4];
  const [bx, by] = [x2 - ux + uy * 0.4, y2 - uy - ux * 0.4];
  return svg`<path class=${kind} d="M${x1} ${y1}L${x2} ${y2}M${ax} ${ay}L${x2} ${y2}L${bx} ${by}" fill="none"></path>`;
}

/** The triangle of level, upright and total force, to scale; where the force points up it stands above the level line. */
export function forcePicture(field: MagneticField, narrow: boolean, words: { readonly summary: string; readonly level: string }): TemplateResult {
  const scale = narrow ? SCALE.narrow : SCALE.wide;
  const width = narrow ? WIDTH.narrow : WIDTH.wide;
  const h = (field.h / 1000) * scale;
  const z = (field.z / 1000) * scale;
  const down = z >= 0;
  const level = down ? MARGIN : MARGIN + Math.abs(z);
  const end = level + z;
  const height = Math.max(Math.abs(z), 26) + 2 * MARGIN + 22;
  const flat = Math.abs(field.inclination) < FLAT;
  const outward = down ? 1 : -1;
  const radius = Math.min(24, Math.hypot(h, z) / 2);
  const arc = { x: LEFT + (radius * h) / (Math.hypot(h, z) || 1), y: level + (radius * z) / (Math.hypot(h, z) || 1) };
  const totalAt = flat ? { x: LEFT + h / 2, y: level + z / 2 + outward * (Math.abs(z) / 2 + 18) + (down ? 4 : 0) } : { x: LEFT + h / 2 - 12, y: level + z / 2 + outward * 8 + 4 };
  return html`<svg part="picture" viewBox="0 0 ${width} ${height}" role="img" aria-label=${words.summary} class="forces">
    <line x1="6" x2=${width - 6} y1=${level} y2=${level} stroke="var(--line)" stroke-dasharray="2 3"></line>
    ${arrow(LEFT, level, LEFT + h, level, 'level')} ${arrow(LEFT + h, level, LEFT + h, end, 'upright')} ${arrow(LEFT, level, LEFT + h, end, 'total')}
    <path class="arc" d="M${LEFT + radius} ${level}A${radius} ${radius} 0 0 ${down ? 1 : 0} ${arc.x} ${arc.y}" fill="none"></path>
    <text x=${h < ROOM ? LEFT + 6 : LEFT + h / 2} y=${level - outward * 8 + (down ? 0 : 10)} text-anchor=${h < ROOM ? 'start' : 'middle'}>H ${microtesla(field.h)}</text>
    <text x=${LEFT + h + 8} y=${Math.abs(z) < 16 ? level + outward * 14 + 4 : level + z / 2 + 4}>Z ${microtesla(field.z)}</text>
    <text x=${totalAt.x} y=${totalAt.y} text-anchor=${flat ? 'middle' : 'end'}>F ${microtesla(field.f)}</text>
    <text x=${LEFT - 8} y=${level - outward * 8 + (down ? 0 : 10)} text-anchor="end">I ${formatAngle(field.inclination)}</text>
    <path class="scale" d="M${LEFT} ${height - 8}v-5M${LEFT} ${height - 8}h${BAR * scale}v-5" fill="none"></path>
    <text class="soft" x=${LEFT + BAR * scale + 6} y=${height - 6}>${BAR} µT</text>
    <text class="soft" x="6" y=${level + outward * 14 + (down ? 0 : 4)}>${words.level}</text>
  </svg>`;
}
