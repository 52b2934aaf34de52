import { wrap180 } from '../../core/angle/wrap.js';

/** A row of [longitude, latitude], degrees. */
export type Line = readonly (readonly [number, number])[];

/** What of a layout decides how a line is drawn. */
export interface Drawn {
  /** The meridian in the middle of a map of the world; null for the surroundings of a pole. */
  readonly middle: number | null;
  /** Whether a place lies on the half of the globe that is drawn. */
  isNear(latitude: number): boolean;
  /** Where a place is drawn; longitudes go on beyond the outline, which clips what is drawn there. */
  project(longitude: number, latitude: number): readonly [number, number];
}

/** The longitudes counted on without a jump at the seam, from the nearest to the middle. */
function unrolled(line: Line, middle: number): Line {
  let counted = middle;
  return line.map(([longitude, latitude]) => [(counted += wrap180(longitude - counted)), latitude]);
}

const turned = (line: Line, turn: number): Line => line.map(([longitude, latitude]) => [longitude + turn, latitude]);

/** A line as often as it meets the map of the world, whole turns apart. */
function onMap(line: Line, middle: number): Line[] {
  const longitudes = line.map(([longitude]) => longitude - middle);
  const [least, most] = [Math.min(...longitudes), Math.max(...longitudes)];
  return [-360, 0, 360].filter((turn) => least + turn < 180 && most + turn > -180).map((turn) => turned(line, turn));
}

/** A ring that goes once round a pole is drawn along the pole's edge too, and so far beside the map that no end of it is seen. */
function roundPole(ring: Line, turn: number): Line {
  const [[first = 0, latitude = 0] = []] = ring;
  const pole = latitude > 0 ? 90 : -90;
  return [[first - turn, pole], ...[-turn, 0, turn].flatMap((by) => turned(ring, by)), [first + 2 * turn, pole]];
}

/** To a tenth of a pixel. */
const pathOf = ({ project }: Drawn, line: Line): string =>
  `M${line.map(([longitude, latitude]) => project(longitude, latitude).map((value) => value.toFixed(1)).join()).join('L')}`;

/** Lines as a path of SVG. */
export function linesPath(drawn: Drawn, lines: readonly Line[]): string {
  const { middle } = drawn;
  return lines
    .filter((line) => line.some(([, latitude]) => drawn.isNear(latitude)))
    .flatMap((line) => (middle === null ? [line] : onMap(unrolled(line, middle), middle)))
    .map((line) => pathOf(drawn, line))
    .join('');
}

/** Areas, each a closed ring, as a path of SVG. */
export function areasPath(drawn: Drawn, rings: readonly Line[]): string {
  const { middle } = drawn;
  return rings
    .filter((ring) => ring.some(([, latitude]) => drawn.isNear(latitude)))
    .flatMap((ring) => {
      if (middle === null) return [ring];
      const line = unrolled(ring, middle);
      const turn = (line[line.length - 1] as Line[number])[0] - (line[0] as Line[number])[0];
      return Math.abs(turn) > 180 ? [roundPole(line, turn)] : onMap(line, middle);
    })
    .map((ring) => `${pathOf(drawn, ring)}Z`)
    .join('');
}
