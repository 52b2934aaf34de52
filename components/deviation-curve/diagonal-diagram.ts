import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import { formatBearing } from '../shared/figures.js';

/** Units a degree down the scale. */
const DEGREE = 3;
const TOP = 16;
const HALF = 180;

/** How far from the scale the largest deviation may reach. */
const REACH = { wide: 78, narrow: 48 } as const;
const COLUMN = { wide: 196, narrow: 146 } as const;
/** Flatter lines than this cannot be followed by eye: the old diagrams draw them at 60° from the scale. */
const STEEPEST = 0.866 * DEGREE;

interface Frame {
  readonly centre: number;
  /** First heading of the column. */
  readonly from: number;
  /** Units across for a degree of deviation. */
  readonly across: number;
  readonly reach: number;
}

const down = (heading: number, { from }: Frame): number => TOP + (heading - from) * DEGREE;

/** Where a compass heading and its deviation meet: along the dotted line, east to the right and downwards. */
function place(heading: number, deviation: number, frame: Frame): { x: number; y: number } {
  return { x: frame.centre + deviation * frame.across, y: down(heading + deviation / 2, frame) };
}

function guides(frame: Frame): SVGTemplateResult[] {
  const most = frame.reach / frame.across;
  const headings = Array.from({ length: HALF / 15 + 1 }, (_, index) => frame.from + index * 15);
  return headings.map((heading) => {
    const y = down(heading, frame);
    const rise = (most / 2) * DEGREE;
    return svg`<line x1=${frame.centre - frame.reach} x2=${frame.centre + frame.reach} y1=${y - rise} y2=${y + rise} class="by-compass"></line>
      <line x1=${frame.centre - frame.reach} x2=${frame.centre + frame.reach} y1=${y + rise} y2=${y - rise} class="by-magnetic"></line>`;
  });
}

/** Each figure stands on the side where the curve is not. */
function scaleView(frame: Frame, curve: DeviationCurve): SVGTemplateResult {
  const degrees = Array.from({ length: HALF / 5 + 1 }, (_, index) => frame.from + index * 5);
  return svg`<line x1=${frame.centre} x2=${frame.centre} y1=${TOP} y2=${TOP + HALF * DEGREE} stroke="var(--ink)" stroke-width="1.2"></line>
    ${degrees.map((heading) => {
      const y = down(heading, frame);
      const long = heading % 15 === 0;
      const west = (curve.at(heading) ?? 0) < 0;
      return svg`<line x1=${frame.centre - (long ? 5 : 2.5)} x2=${frame.centre + (long ? 5 : 2.5)} y1=${y} y2=${y} stroke="var(--ink)"></line>
        ${long ? svg`<text class="soft figure" x=${frame.centre + (west ? 8 : -8)} y=${y + 4} text-anchor=${west ? 'start' : 'end'}>${formatBearing(heading, 0).replace('°', '')}</text>` : nothing}`;
    })}`;
}

function curvePath(curve: DeviationCurve, frame: Frame): string {
  const points: string[] = [];
  for (let heading = frame.from - 6; heading <= frame.from + HALF + 6; heading += 2) {
    const deviation = curve.at(heading);
    if (deviation === null) continue;
    const { x, y } = place(heading, deviation, frame);
    if (y >= TOP - 8 && y <= TOP + HALF * DEGREE + 8) points.push(`${x.toFixed(1)} ${y.toFixed(1)}`);
  }
  return points.length > 1 ? `M${points.join('L')}` : '';
}

/** Out along the dotted line from the compass heading, back along the plain one to the magnetic. */
function walk(heading: number, curve: DeviationCurve, frame: Frame): SVGTemplateResult | typeof nothing {
  const deviation = curve.at(heading);
  if (deviation === null || heading < frame.from || heading >= frame.from + HALF) return nothing;
  const turn = place(heading, deviation, frame);
  const [start, finish] = [down(heading, frame), down(heading + deviation, frame)];
  return svg`<path class="walk" d="M${frame.centre} ${start}L${turn.x} ${turn.y}L${frame.centre} ${finish}" fill="none"></path>
    <circle cx=${frame.centre} cy=${start} r="3.5" fill="var(--accent)"></circle>
    <circle cx=${frame.centre} cy=${finish} r="3.5" fill="var(--paper)" stroke="var(--accent)" stroke-width="2"></circle>`;
}

/**
 * The diagram for conversion by hand: headings down two scales, dotted lines for compass
 * and plain ones for magnetic, slanting alike, and the curve where the dotted line from a
 * compass heading has run the deviation. Dotted out and plain back turns a compass heading
 * into a magnetic one; plain out and dotted back the other way.
 */
export function diagonalDiagram(curve: DeviationCurve, largest: number, heading: number, narrow: boolean, summary: string): TemplateResult {
  const size = narrow ? 'narrow' : 'wide';
  const reach = REACH[size];
  const across = Math.min(reach / Math.max(4, largest * 1.1), narrow ? STEEPEST * 2 : STEEPEST * 4);
  const frames: Frame[] = [0, 1].map((half) => ({ centre: COLUMN[size] * (half + 0.5) + (narrow ? 6 : 10), from: half * HALF, across, reach }));
  const width = COLUMN[size] * 2 + 12;
  return html`<svg part="picture" viewBox="0 0 ${width} ${TOP * 2 + HALF * DEGREE}" role="img" aria-label=${summary} class="diagonal">
    ${frames.map((frame) => svg`${guides(frame)}
      <path d=${curvePath(curve, frame)} fill="none" stroke="var(--accent)" stroke-width="2"></path>
      ${scaleView(frame, curve)} ${walk(heading, curve, frame)}`)}
  </svg>`;
}
