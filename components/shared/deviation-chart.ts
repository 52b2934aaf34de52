import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { compassPoints } from '../../core/angle/compass-points.js';
import { wrap360 } from '../../core/angle/wrap.js';
import { curveTone } from './curve-tone.js';
import { deviationScale } from './deviation-scale.js';
import type { DeviationScale } from './deviation-scale.js';
import { formatBearing, formatError } from './figures.js';

/** One curve of deviations by compass heading. */
export interface ChartCurve {
  readonly name: string;
  /** Degrees, east positive; null where the curve has none. */
  at(heading: number): number | null;
}

/** A deviation observed: heading by compass and deviation, degrees. */
export interface ChartPoint {
  readonly heading: number;
  readonly deviation: number;
  /** Does not seem to belong to the swing, or has been struck out of it. */
  readonly mark?: 'suspect' | 'struck';
}

export interface ChartContent {
  /** The first is the one in use; the rest stand behind it, paler and broken. */
  readonly curves: readonly ChartCurve[];
  readonly points?: readonly ChartPoint[];
  /** Where the true curve lies, degrees, lower and upper; null where that is not known. */
  readonly band?: ((heading: number) => readonly [number, number] | null) | undefined;
  /** Largest deviation allowed either way, degrees. */
  readonly limit?: number | null;
  /** Heading under the reader's cursor. */
  readonly cursor?: number | null;
  /** Tells the chart from another in the same widget. */
  readonly id?: string;
}

/** Units that are pixels at full size: a narrow widget gets a narrow drawing, not small type. */
const CHART_SIZE = { wide: { width: 640, height: 320 }, middle: { width: 440, height: 220 }, narrow: { width: 300, height: 250 } } as const;

export type ChartSize = keyof typeof CHART_SIZE;

const EDGE = { left: 52, right: 12, top: 12, bottom: 40 } as const;

/** Fine enough for a smooth line. */
const SAMPLE = 3;
const samples = Array.from({ length: 360 / SAMPLE + 1 }, (_, place) => place * SAMPLE);
/** A band has no line at its edge: every other sample is fine enough. */
const BAND_STEP = 2;
const bandSamples = samples.filter((_, place) => place % BAND_STEP === 0);

type Edges = readonly [low: number, high: number] | null;

/** Curves and band at their samples: scale and drawing ask for the same. */
interface Sampled {
  readonly lines: readonly (readonly (number | null)[])[];
  readonly band: readonly Edges[];
}

function sampled({ curves, band }: ChartContent): Sampled {
  return { lines: curves.map((curve) => samples.map((heading) => curve.at(heading))), band: band ? bandSamples.map(band) : [] };
}

/** Everything of a chart that has to fit on its scale; null where it has nothing. */
export function chartedDeviations(content: ChartContent, { lines, band } = sampled(content)): readonly (number | null)[] {
  const { points = [], limit } = content;
  // A limit far outside everything would press the curve flat.
  const charted: (number | null)[] = limit && limit <= 6 ? [limit, -limit] : [];
  return charted.concat(points.map(({ deviation }) => deviation), ...lines, ...band);
}

interface Place {
  x(heading: number): number;
  y(deviation: number): number;
}

/** Across a drawing from north to north. */
const across = (heading: number, width: number): number => EDGE.left + (heading / 360) * (width - EDGE.left - EDGE.right);

/** How far across every sample stands, as it is written in a path: the same at every drawing of a width. */
const written = new Map<number, readonly string[]>();

function writtenAcross(width: number): readonly string[] {
  const known = written.get(width) ?? samples.map((heading) => across(heading, width).toFixed(1));
  written.set(width, known);
  return known;
}

/** A point as it is written in a path. */
const corner = (x: string | undefined, y: number): string => `${x} ${y.toFixed(1)}`;

/** The points of a line, a text for each piece of it: it breaks off where there is nothing to draw. */
function linePoints(line: readonly (number | null)[], { y }: Place, x: readonly string[]): readonly string[] {
  const points = line.map((deviation, place) => (deviation === null ? '|' : corner(x[place], y(deviation))));
  return points.join(' ').split('|').filter((piece) => piece.trim());
}

/** The points round a band: along its lower edge, and back along the upper. */
function bandPoints(band: readonly Edges[], { y }: Place, x: readonly string[]): string {
  const along = (edge: 0 | 1): string[] => band.flatMap((edges, place) => (edges ? corner(x[place * BAND_STEP], y(edges[edge])) : []));
  return [...along(0), ...along(1).reverse()].join(' ');
}

/** A reading that does not count, or should not. */
function markedView(point: ChartPoint, { x, y }: Place): SVGTemplateResult {
  const [over, up] = [x(wrap360(point.heading)), y(point.deviation)];
  const cross = svg`<path d="M${over - 4} ${up - 4}l8 8m0 -8l-8 8" stroke="currentColor" stroke-width="1.4" fill="none"></path>`;
  if (point.mark === 'struck') return svg`<g class="struck">${cross}</g>`;
  return svg`<g class="suspect">${cross}<circle cx=${over} cy=${up} r="8" fill="none" stroke="currentColor" stroke-width="1.4"></circle></g>`;
}

/** The readings that belong to the curve: one line that is not drawn, with a ring at each corner. */
function ringsView(points: readonly ChartPoint[], { x, y }: Place, id: string): SVGTemplateResult {
  const corners = points.map(({ heading, deviation }) => corner(x(wrap360(heading)).toFixed(1), y(deviation))).join(' ');
  return svg`<marker id=${id} markerUnits="userSpaceOnUse" markerWidth="10" markerHeight="10" refX="5" refY="5">
      <circle cx="5" cy="5" r="3.2" fill="var(--paper)" stroke="var(--ink)" stroke-width="1.4"></circle>
    </marker>
    <polyline class="readings" points=${corners} fill="none" marker-start="url(#${id})" marker-mid="url(#${id})" marker-end="url(#${id})"></polyline>`;
}

/** The name of a tick's direction, which stands under its figures; empty where it has none of the sixteen. */
export function pointName(heading: number): string {
  return compassPoints[(heading % 360) / 22.5] ?? '';
}

function axes(scale: DeviationScale, place: Place, { width, height }: { width: number; height: number }, every: number): SVGTemplateResult {
  const headings = Array.from({ length: 360 / every + 1 }, (_, index) => index * every);
  const decimals = scale.step < 1 ? 1 : 0;
  const foot = height - EDGE.bottom;
  return svg`${scale.ticks.map(
    (tick) => svg`<line x1=${EDGE.left} x2=${width - EDGE.right} y1=${place.y(tick)} y2=${place.y(tick)} stroke=${tick === 0 ? 'var(--ink)' : 'var(--line)'}></line>
      <text class="soft" x=${EDGE.left - 8} y=${place.y(tick) + 4} text-anchor="end">${formatError(tick, decimals)}</text>`,
  )}
  ${headings.map(
    (heading) => svg`<line x1=${place.x(heading)} x2=${place.x(heading)} y1=${EDGE.top} y2=${foot + 5} stroke="var(--line)"></line>
      <text class="soft" x=${place.x(heading)} y=${foot + 18} text-anchor="middle">${formatBearing(heading, 0).replace('°', '')}</text>
      <text class="soft" x=${place.x(heading)} y=${foot + 32} text-anchor="middle">${pointName(heading)}</text>`,
  )}`;
}

function limitView(limit: number, scale: DeviationScale, { y }: Place, width: number): SVGTemplateResult {
  return svg`${[limit, -limit]
    .filter((at) => at >= scale.low && at <= scale.high)
    .map((at) => svg`<line x1=${EDGE.left} x2=${width - EDGE.right} y1=${y(at)} y2=${y(at)} stroke="var(--warn)" stroke-dasharray="1 4"></line>`)}`;
}

function cursorView(cursor: number, curves: readonly ChartCurve[], { x, y }: Place, height: number): SVGTemplateResult {
  return svg`<line x1=${x(cursor)} x2=${x(cursor)} y1=${EDGE.top} y2=${height - EDGE.bottom} stroke="var(--accent)" stroke-dasharray="2 2"></line>
    ${curves.map((curve) => {
      const deviation = curve.at(cursor);
      return deviation === null ? nothing : svg`<circle cx=${x(cursor)} cy=${y(deviation)} r="3.5" fill="var(--accent)"></circle>`;
    })}`;
}

/**
 * Deviation by compass heading, east upwards, drawn as vectors: for the first paint, for
 * print, and wherever a picture is enough. `summary` says the same in words.
 *
 * What moves at every key typed is drawn by `points`: a path's `d`, a circle's `cy` and the like
 * count as style, which is then worked out anew.
 */
export function deviationChart(content: ChartContent, summary: string, size: ChartSize = 'wide'): TemplateResult {
  const { curves, points = [], band, limit, cursor, id = 'chart' } = content;
  const { width, height } = CHART_SIZE[size];
  const known = sampled(content);
  const scale = deviationScale(chartedDeviations(content, known));
  const x = writtenAcross(width);
  const place: Place = {
    x: (heading) => across(heading, width),
    y: (deviation) => EDGE.top + ((scale.high - deviation) / (scale.high - scale.low)) * (height - EDGE.top - EDGE.bottom),
  };
  return html`<svg part="picture" viewBox="0 0 ${width} ${height}" role="img" aria-label=${summary} class="deviation-chart">
    ${axes(scale, place, { width, height }, size === 'wide' ? 45 : 90)}
    ${band ? svg`<polygon points=${bandPoints(known.band, place, x)} fill="var(--accent)" fill-opacity="0.16"></polygon>` : nothing}
    ${limit ? limitView(limit, scale, place, width) : nothing}
    ${known.lines
      .map((line, index) => ({ pieces: linePoints(line, place, x), tone: curveTone(index) }))
      .reverse()
      .map(({ pieces, tone }) => pieces.map((points) => svg`<polyline points=${points} fill="none" stroke=${tone.colour} stroke-width=${tone.width} stroke-dasharray=${tone.dash.join(' ') || 'none'}></polyline>`))}
    ${points.length > 0 ? ringsView(points.filter(({ mark }) => !mark), place, `${id}-ring`) : nothing} ${points.filter(({ mark }) => mark).map((point) => markedView(point, place))}
    ${cursor === null || cursor === undefined ? nothing : cursorView(cursor, curves, place, height)}
  </svg>`;
}

/** The whole heading under a pointer over the drawing; null beside it. */
export function headingAt(event: PointerEvent): number | null {
  const drawing = (event.currentTarget as Element | null)?.querySelector('svg.deviation-chart');
  if (!drawing) return null;
  const { left, width } = drawing.getBoundingClientRect();
  const full = Number(drawing.getAttribute('viewBox')?.split(' ')[2] ?? CHART_SIZE.wide.width);
  const from = ((event.clientX - left) / width) * full;
  const heading = Math.round(((from - EDGE.left) / (full - EDGE.left - EDGE.right)) * 360);
  return heading < 0 || heading > 360 ? null : heading % 360;
}
