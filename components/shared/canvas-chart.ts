import type uPlot from 'uplot';
import { wrap360 } from '../../core/angle/wrap.js';
import { curveTone } from './curve-tone.js';
import { chartedDeviations, pointName } from './deviation-chart.js';
import type { ChartContent, ChartPoint } from './deviation-chart.js';
import { deviationScale } from './deviation-scale.js';
import { formatBearing, formatError } from './figures.js';

/** What the canvas is painted with: it knows no custom properties. */
export interface ChartPaint {
  /** The colour behind `var(--name)`. */
  colour(name: string): string;
  readonly font: string;
  /** Height of the letters, CSS pixels: all room for them grows with it. */
  readonly letter: number;
}

const headings = Array.from({ length: 361 }, (_, heading) => heading);

/** The numbers: headings, then the deviations of each curve. */
export function canvasData({ curves }: ChartContent): uPlot.AlignedData {
  return [headings, ...curves.map((curve) => headings.map((heading) => curve.at(heading)))];
}

/** Under the curves: the line of no deviation, and the band. */
function paintUnder(u: uPlot, { band }: ChartContent, { colour }: ChartPaint): void {
  u.ctx.strokeStyle = colour('--ink');
  u.ctx.lineWidth = devicePixelRatio;
  paintLevel(u, u.valToPos(0, 'y', true));
  if (!band) return;
  const edges = headings.flatMap((heading) => {
    const edge = band(heading);
    return edge ? [{ x: u.valToPos(heading, 'x', true), low: u.valToPos(edge[0], 'y', true), high: u.valToPos(edge[1], 'y', true) }] : [];
  });
  const { ctx } = u;
  ctx.save();
  ctx.globalAlpha = 0.16;
  ctx.fillStyle = colour('--accent');
  ctx.beginPath();
  for (const { x, high } of edges) ctx.lineTo(x, high);
  for (const { x, low } of [...edges].reverse()) ctx.lineTo(x, low);
  ctx.fill();
  ctx.restore();
}

function paintPoint(u: uPlot, point: ChartPoint, { colour }: ChartPaint): void {
  const { ctx } = u;
  const size = 4 * devicePixelRatio;
  const [x, y] = [u.valToPos(wrap360(point.heading), 'x', true), u.valToPos(point.deviation, 'y', true)];
  ctx.strokeStyle = colour(point.mark === 'suspect' ? '--bad' : point.mark === 'struck' ? '--soft' : '--ink');
  ctx.beginPath();
  if (point.mark) {
    ctx.moveTo(x - size, y - size);
    ctx.lineTo(x + size, y + size);
    ctx.moveTo(x + size, y - size);
    ctx.lineTo(x - size, y + size);
  }
  if (point.mark === 'suspect') {
    ctx.moveTo(x + 2 * size, y);
    ctx.arc(x, y, 2 * size, 0, 2 * Math.PI);
  }
  if (!point.mark) {
    ctx.arc(x, y, size * 0.8, 0, 2 * Math.PI);
    ctx.fillStyle = colour('--paper');
    ctx.fill();
  }
  ctx.stroke();
}

/** A level line across the drawing. */
function paintLevel({ ctx, bbox }: uPlot, y: number): void {
  ctx.beginPath();
  ctx.moveTo(bbox.left, y);
  ctx.lineTo(bbox.left + bbox.width, y);
  ctx.stroke();
}

/** What lies over the curves: the limit either way, then the points. */
function paintOver(u: uPlot, { limit, points = [] }: ChartContent, paint: ChartPaint): void {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.lineWidth = 1.4 * devicePixelRatio;
  for (const at of limit ? [limit, -limit] : []) {
    const y = u.valToPos(at, 'y', true);
    if (y < bbox.top || y > bbox.top + bbox.height) continue;
    ctx.strokeStyle = paint.colour('--warn');
    ctx.setLineDash([devicePixelRatio, 4 * devicePixelRatio]);
    paintLevel(u, y);
  }
  ctx.setLineDash([]);
  for (const point of points) paintPoint(u, point, paint);
  ctx.restore();
}

/** Everything the drawing library wants to know; `onCursor` hears the heading under the pointer. */
export function canvasOptions(content: ChartContent, paint: ChartPaint, size: { width: number; height: number }, onCursor: (heading: number) => void): uPlot.Options {
  const scale = deviationScale(chartedDeviations(content));
  const every = size.width < 42 * paint.letter ? 90 : 45;
  const line = { stroke: paint.colour('--line'), width: 1 };
  const text = { stroke: paint.colour('--soft'), font: paint.font };
  const decimals = scale.step < 1 ? 1 : 0;
  return {
    ...size,
    legend: { show: false },
    cursor: { y: false, drag: { x: false, y: false, setScale: false }, points: { size: 7, fill: paint.colour('--accent'), stroke: paint.colour('--accent') } },
    scales: { x: { time: false, range: [0, 360] }, y: { range: [scale.low, scale.high] } },
    axes: [
      {
        ...text,
        grid: line,
        ticks: line,
        size: 3.7 * paint.letter,
        splits: () => Array.from({ length: 360 / every + 1 }, (_, index) => index * every),
        values: (_, splits) => splits.map((heading) => `${formatBearing(heading, 0).replace('°', '')}\n${pointName(heading)}`),
      },
      { ...text, grid: line, ticks: line, size: 4.7 * paint.letter, splits: () => [...scale.ticks], values: (_, splits) => splits.map((deviation) => formatError(deviation, decimals)) },
    ],
    series: [
      {},
      ...content.curves.map((curve, place) => {
        const tone = curveTone(place);
        return { label: curve.name, stroke: paint.colour(tone.colour.slice(4, -1)), width: tone.width, dash: [...tone.dash], points: { show: false } };
      }),
    ],
    hooks: {
      drawAxes: [(u) => paintUnder(u, content, paint)],
      draw: [(u) => paintOver(u, content, paint)],
      setCursor: [
        (u) => {
          const { idx, event } = u.cursor;
          // Only where a pointer moved it; the widget itself moves it too.
          if (event && typeof idx === 'number') onCursor((headings[idx] ?? 0) % 360);
        },
      ],
    },
  };
}
