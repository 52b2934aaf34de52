import type { LubberFieldMap } from '../../../components/field-map/field-map.js';
import { must, root } from '../../support/in-widget.js';

export type Point = readonly [x: number, y: number];

const RADIAN = 180 / Math.PI;

/**
 * The projection Natural Earth of a globe of radius 1: Šavrič, Jenny, Patterson, Petrovič and Hurni, A polynomial
 * equation for the Natural Earth projection, Cartography and Geographic Information Science 38 (2011).
 */
function naturalEarth(latitude: number, fromMiddle: number): Point {
  const [f, l] = [latitude / RADIAN, fromMiddle / RADIAN];
  const x = l * (0.8707 - 0.131979 * f ** 2 - 0.013791 * f ** 4 + 0.003971 * f ** 10 - 0.001529 * f ** 12);
  const y = 1.007226 * f + 0.015085 * f ** 3 - 0.044475 * f ** 7 + 0.028874 * f ** 9 - 0.005916 * f ** 11;
  return [x, y];
}

export const svgOf = (element: LubberFieldMap): SVGSVGElement => must(root(element).querySelector<SVGSVGElement>('svg.map'));
export const drawn = (element: LubberFieldMap, name: string): SVGPathElement => must(svgOf(element).querySelector<SVGPathElement>(`path.${name}`));

/**
 * Where a place belongs on the map, by the frame as it is drawn: the equator is as long as the frame is wide; a map of a
 * pole is equidistant (Snyder, Map Projections: A Working Manual, chapter 25), its frame the parallel of 50°, with
 * Greenwich downwards in the north, upwards in the south, and 90° east to the right in both.
 */
export function whereOn(element: LubberFieldMap, latitude: number, longitude: number): Point {
  const { x, y, width, height } = drawn(element, 'outline').getBBox();
  const [middleX, middleY] = [x + width / 2, y + height / 2];
  if (element.view === 'north' || element.view === 'south') {
    const sign = element.view === 'north' ? 1 : -1;
    const away = ((90 - sign * latitude) / 40) * (width / 2);
    return [middleX + away * Math.sin(longitude / RADIAN), middleY + sign * away * Math.cos(longitude / RADIAN)];
  }
  const fromMiddle = element.view === 'pacific' ? ((longitude + 360) % 360) - 180 : longitude;
  const [across, up] = naturalEarth(latitude, fromMiddle);
  const scale = width / 2 / naturalEarth(0, 180)[0];
  return [middleX + across * scale, middleY - up * scale];
}

/** The pieces of a path, each the corners it is drawn by. */
export function piecesOf(path: Element): readonly (readonly Point[])[] {
  return (path.getAttribute('d') ?? '')
    .split('M')
    .filter((piece) => piece !== '')
    .map((piece) => piece.replace('Z', '').split('L').map((pair): Point => {
      const [x = NaN, y = NaN] = pair.split(/[ ,]/).map(Number);
      return [x, y];
    }));
}

function fromSide([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const part = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - ax - part * dx, y - ay - part * dy);
}

/** How far a point lies from a line drawn. */
export const awayFrom = (point: Point, line: readonly Point[]): number =>
  Math.min(...line.slice(1).map((corner, index) => fromSide(point, must(line[index]), corner)));

/** The piece of some paths that comes nearest to a point. */
export function nearest(point: Point, paths: readonly Element[]): { readonly away: number; readonly piece: readonly Point[]; readonly path: Element } {
  const all = paths.flatMap((path) => piecesOf(path).map((piece) => ({ away: awayFrom(point, piece), piece, path })));
  return all.reduce((best, each) => (each.away < best.away ? each : best));
}
