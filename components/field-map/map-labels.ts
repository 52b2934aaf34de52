import { atan2Degrees } from '../../core/angle/trigonometry.js';

type Point = readonly [number, number];

/** Half the width and height of the upright box that a label takes, and its middle. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

export interface LineLabel {
  readonly x: number;
  readonly y: number;
  /** Clockwise, degrees, [-90, 90]. */
  readonly turn: number;
  readonly text: string;
}

/** A line as drawn, with the way along it to each of its points. */
interface MeasuredLine {
  readonly points: readonly Point[];
  readonly along: readonly number[];
  readonly length: number;
}

/** Mean width of a letter and height of a line of the labels, pixels. */
const LETTER = 6.4;
const HEIGHT = 12;
/** Between two labels of one line, pixels. */
const APART = 340;
/** A label stays upright enough to be read. */
const STRAY = 2.5;

/** The box of a figure at the map's edge, which starts, ends or is centred at a point. */
export function figureBox({ x, y, text, anchor }: { readonly x: number; readonly y: number; readonly text: string; readonly anchor: string }): Box {
  const halfWidth = (text.length * LETTER) / 2;
  const shift = anchor === 'start' ? halfWidth : anchor === 'end' ? -halfWidth : 0;
  return { x: x + shift, y: y - HEIGHT / 3, halfWidth, halfHeight: HEIGHT / 2 };
}

function measured(points: readonly Point[]): MeasuredLine {
  const along = [0];
  for (let index = 1; index < points.length; index++) {
    const [[ax, ay], [bx, by]] = [points[index - 1] as Point, points[index] as Point];
    along.push((along[index - 1] as number) + Math.hypot(bx - ax, by - ay));
  }
  return { points, along, length: along[along.length - 1] as number };
}

function pointAt({ points, along }: MeasuredLine, way: number): Point {
  let index = 1;
  while (index < along.length - 1 && (along[index] as number) < way) index++;
  const [[ax, ay], [bx, by]] = [points[index - 1] as Point, points[index] as Point];
  const [from, to] = [along[index - 1] as number, along[index] as number];
  const part = to === from ? 0 : (way - from) / (to - from);
  return [ax + (bx - ax) * part, ay + (by - ay) * part];
}

const overlap = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < a.halfWidth + b.halfWidth && Math.abs(a.y - b.y) < a.halfHeight + b.halfHeight;

/** The label with its middle at a way along the line, or null where the line bends too much under it. */
function labelAt(line: MeasuredLine, way: number, text: string): { readonly label: LineLabel; readonly box: Box } | null {
  const half = (text.length * LETTER) / 2;
  if (way < half + 4 || way > line.length - half - 4) return null;
  const [[ax, ay], [x, y], [bx, by]] = [pointAt(line, way - half), pointAt(line, way), pointAt(line, way + half)];
  const [midX, midY] = [(ax + bx) / 2, (ay + by) / 2];
  if (Math.hypot(x - midX, y - midY) > STRAY) return null;
  const direction = atan2Degrees(by - ay, bx - ax);
  const turn = direction > 90 ? direction - 180 : direction < -90 ? direction + 180 : direction;
  const [wide, high] = [Math.abs(bx - ax), Math.abs(by - ay)];
  return {
    label: { x: midX, y: midY, turn, text },
    box: { x: midX, y: midY, halfWidth: (wide + HEIGHT) / 2 + 2, halfHeight: (high + HEIGHT) / 2 + 1 },
  };
}

/**
 * Puts the label of a line on it, once or at intervals, where it lies straight and meets no
 * other; a line without such a place stays without. Boxes taken are added to `taken`.
 */
export function labelLine(points: readonly Point[], text: string, taken: Box[], fits: (x: number, y: number) => boolean): LineLabel[] {
  const line = measured(points);
  const wanted = Math.max(1, Math.round(line.length / APART));
  const labels: LineLabel[] = [];
  for (let place = 0; place < wanted; place++) {
    const room = line.length / wanted;
    const middle = (place + 0.5) * room;
    // From the middle of its share of the line outwards.
    for (let shift = 0; shift < room * 0.45; shift += 9) {
      const found = [middle + shift, middle - shift]
        .map((way) => labelAt(line, way, text))
        .find((made) => made !== null && fits(made.label.x, made.label.y) && !taken.some((box) => overlap(box, made.box)));
      if (!found) continue;
      labels.push(found.label);
      taken.push(found.box);
      break;
    }
  }
  return labels;
}
