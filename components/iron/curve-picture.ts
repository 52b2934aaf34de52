import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { partsOnHeading } from '../../core/iron/deviation-parts.js';
import type { DeviationParts } from '../../core/iron/deviation-parts.js';
import type { IronCurvePoint } from '../../core/iron/iron-curve.js';
import { formatBearing } from '../shared/figures.js';
import { curvePath, scaleLimit } from './curve-line.js';
import type { CurveScale } from './curve-line.js';
import { partLines, partPath } from './curve-parts.js';

export interface CurvePicture {
  readonly curve: readonly IronCurvePoint[];
  readonly largest: DeviationParts | null;
  /** Drawn dashed behind: as she is without correctors, upright, or elsewhere. */
  readonly beside: readonly IronCurvePoint[] | null;
  readonly shown: ReadonlySet<string>;
  readonly compassHeading: number | null;
  readonly deviation: number | null;
  /** Says the same in words. */
  readonly summary: string;
  readonly width: number;
  readonly east: string;
  readonly west: string;
}

const LEFT = 44;
const RIGHT = 10;
const TOP = 10;
const BOTTOM = 24;

const largestOf = (curve: readonly IronCurvePoint[]): number =>
  Math.max(0, ...curve.map(({ deviation }) => Math.abs(deviation ?? 0)));

/** Deviation by compass heading: the whole, its parts, and a second ship's state beside it. */
export function curvePicture(picture: CurvePicture): TemplateResult {
  const { curve, largest, beside, shown, width } = picture;
  const height = width > 400 ? 300 : 210;
  const all = largest ? partLines(shown) : [];
  const parts = largest ? all.map((line) => Math.abs(line.value(largest))) : [];
  const limit = scaleLimit(Math.max(4, largestOf(curve), beside ? largestOf(beside) : 0, ...parts));
  // Flatter than this a part cannot be told from the axis.
  const lines = all.filter((_, index) => (parts[index] ?? 0) > 0.012 * limit);
  const middle = TOP + (height - TOP - BOTTOM) / 2;
  const scale: CurveScale = {
    x: (heading) => LEFT + (heading / 360) * (width - LEFT - RIGHT),
    y: (deviation) => middle - (deviation / limit) * (middle - TOP),
  };
  const here = picture.compassHeading === null || picture.deviation === null ? null : scale.x(picture.compassHeading);
  const turn = scale.x(360) - scale.x(0);
  const repeated = (path: string, attributes: string): TemplateResult =>
    svg`<g clip-path="url(#plot)">${[-turn, 0, turn].map(
      (by) => svg`<path d=${path} class=${attributes} transform="translate(${by} 0)"></path>`,
    )}</g>`;
  return html`<svg part="picture" viewBox="0 0 ${width} ${height}" role="img" aria-label=${picture.summary} class="curve">
    <clipPath id="plot"><rect x=${LEFT} y=${TOP - 3} width=${turn} height=${2 * (middle - TOP) + 6}></rect></clipPath>
    ${grid(scale, limit, width, height, picture)}
    ${here === null ? nothing : svg`<line class="here" x1=${here} x2=${here} y1=${TOP} y2=${height - BOTTOM}></line>`}
    ${beside ? repeated(curvePath(beside, scale), 'beside') : nothing}
    ${largest
      ? lines.map((line) => {
          const value = line.value(partsOnHeading(largest, line.labelAt));
          // Where the iron is stronger than the Earth a part may be ten times what the scale holds.
          return svg`<g clip-path="url(#plot)"><path d=${partPath(line, largest, scale)} class="part ${line.kind} ${line.induced ? 'induced' : ''}"></path></g>
            ${Math.abs(value) > limit ? nothing : svg`<text class="letter" text-anchor="middle" x=${scale.x(line.labelAt)} y=${letterHeight(scale, value)}>${line.label}</text>`}`;
        })
      : nothing}
    ${repeated(curvePath(curve, scale), 'whole')}
    ${here === null ? nothing : svg`<circle class="here" cx=${here} cy=${scale.y(picture.deviation ?? 0)} r="4.5"></circle>`}
  </svg>`;
}

/** Above a line that rises, below one that falls. */
function letterHeight({ y }: CurveScale, value: number): number {
  return y(value) + (value >= 0 ? -5 : 14);
}

function grid({ x, y }: CurveScale, limit: number, width: number, height: number, { east, west }: CurvePicture): TemplateResult {
  const every = width > 400 ? 45 : 90;
  const headings = Array.from({ length: 360 / every + 1 }, (_, index) => index * every);
  const label = (value: number): string =>
    value === 0 ? '0°' : `${Math.abs(value)}° ${value > 0 ? east : west}`;
  return svg`${[-limit, -limit / 2, 0, limit / 2, limit].map(
    (value) => svg`<line class=${value === 0 ? 'axis' : 'rule'} x1=${LEFT} x2=${width - RIGHT} y1=${y(value)} y2=${y(value)}></line>
      <text class="soft" x=${LEFT - 6} y=${y(value) + 4} text-anchor="end">${label(value)}</text>`,
  )}
  ${headings.map(
    (heading) => svg`<line class="rule" x1=${x(heading)} x2=${x(heading)} y1=${TOP} y2=${height - BOTTOM}></line>
      <text class="soft" x=${x(heading)} y=${height - 7} text-anchor=${heading === 360 ? 'end' : 'middle'}>${heading === 360 ? '360°' : formatBearing(heading, 0)}</text>`,
  )}`;
}
