import { isolines } from '../../core/field/isolines.js';
import { magneticFieldGrid } from '../../core/field/magnetic-field-grid.js';
import type { MagneticFieldGrid } from '../../core/field/magnetic-field-grid.js';
import { magneticPoles } from '../../core/field/magnetic-poles.js';
import type { MagneticPoles } from '../../core/field/magnetic-poles.js';
import { zoneOutlines } from '../../core/field/zone-outline.js';
import type { EdgeFigure } from './map-ground.js';
import { figureBox, labelLine } from './map-labels.js';
import type { Box, LineLabel } from './map-labels.js';
import { elementOf, kindOf, levelText, levelsOf } from './map-levels.js';
import type { LineKind, MapLines } from './map-levels.js';
import { areasPath, linesPath } from './map-path.js';
import type { Line } from './map-path.js';
import { isPolar } from './map-views.js';
import type { MapLayout } from './map-views.js';

/** What of a map changes with the date: paths of SVG, labels, poles. */
export interface MapDrawing {
  readonly grid: MagneticFieldGrid;
  readonly poles: MagneticPoles;
  readonly lines: Readonly<Record<LineKind, string>>;
  readonly labels: readonly LineLabel[];
  readonly equator: string;
  readonly caution: string;
  readonly blackout: string;
}

/** Lines of equal variation all run into the poles; nearer to them than this a label of the world map is not read. */
const LABEL_LATITUDE = 72;
/** Limits of the zones, nT: WMM2020 technical report, section 1.7. */
const [BLACKOUT, CAUTION] = [2000, 6000];
/** A narrow map takes half the lines. */
const CROWDED = 560;

/** Whether the nearest place of a grid lies outside the blackout zone. */
function isUsable(grid: MagneticFieldGrid, [longitude, latitude]: readonly [number, number]): boolean {
  const column = Math.round((longitude + 180) / grid.step) % grid.longitudes.length;
  return (grid.h[Math.round((90 - latitude) / grid.step) * grid.longitudes.length + column] ?? 0) >= BLACKOUT;
}

/**
 * In a map of the world the lines of equal variation end at the blackout zone, where they
 * would run together into a blot; a map of a pole has room for them.
 */
function outsideBlackout(line: Line, grid: MagneticFieldGrid): Line[] {
  const pieces: (readonly [number, number])[][] = [[]];
  for (const place of line) {
    const last = pieces[pieces.length - 1] as (readonly [number, number])[];
    if (isUsable(grid, place)) last.push(place);
    else if (last.length > 0) pieces.push([]);
  }
  return pieces.filter((piece) => piece.length > 1);
}

/** A line as it is drawn, in pieces where the map's edge cuts it. */
function drawnPieces(line: Line, layout: MapLayout): (readonly [number, number])[][] {
  const pieces: (readonly [number, number])[][] = [];
  let piece: (readonly [number, number])[] = [];
  for (const [longitude, latitude] of line) {
    const place = { latitude, longitude };
    const at = layout.shows(place) ? layout.point(place) : null;
    const last = piece[piece.length - 1];
    const broken = at === null || (last !== undefined && Math.abs(at[0] - last[0]) > layout.width / 3);
    if (broken && piece.length > 1) pieces.push(piece);
    if (broken) piece = [];
    if (at) piece.push(at);
  }
  if (piece.length > 1) pieces.push(piece);
  return pieces;
}

/** Both areas in which the horizontal force is below a limit. */
function zonePath(limit: number, instant: Date, layout: MapLayout): string {
  const { north, south } = zoneOutlines(limit, instant);
  return areasPath(layout, [north, south]);
}

/** Room kept free around the sign of a pole. */
const poleBox = ([x, y]: readonly [number, number]): Box => ({ x, y, halfWidth: 9, halfHeight: 9 });

/** Computes and draws the lines, zones and poles of a date. Throws `RangeError` outside the models. */
export function drawMap(lines: MapLines, instant: Date, layout: MapLayout, figures: readonly EdgeFigure[]): MapDrawing {
  const grid = magneticFieldGrid({ step: isPolar(layout.view) ? 1 : 2, instant });
  const poles = magneticPoles(instant);
  const isCut = lines === 'variation' && !isPolar(layout.view);
  const levels = isolines(grid, elementOf[lines], levelsOf(lines, layout.width < CROWDED)).map((level) =>
    isCut ? { ...level, lines: level.lines.flatMap((line) => outsideBlackout(line, grid)) } : level,
  );
  const equator = isolines(grid, 'z', [0]).flatMap((level) => level.lines);

  const shownPoles = [poles.dip.north, poles.dip.south, poles.geomagnetic.north, poles.geomagnetic.south].filter((pole) => layout.shows(pole));
  const taken = [...shownPoles.map((pole) => poleBox(layout.point(pole))), ...figures.map(figureBox)];
  const fits = (x: number, y: number): boolean => {
    const place = layout.place(x, y);
    return place !== null && x > 30 && x < layout.width - 30 && (isPolar(layout.view) || Math.abs(place.latitude) < LABEL_LATITUDE);
  };
  const labels = levels.flatMap(({ level, lines: ofLevel }) =>
    ofLevel.flatMap((line) => drawnPieces(line, layout)).flatMap((piece) => labelLine(piece, levelText(lines, level), taken, fits)),
  );

  const together = (kind: LineKind): string =>
    linesPath(
      layout,
      levels.filter(({ level }) => kindOf(lines, level) === kind).flatMap((level) => level.lines),
    );
  const paths = { zero: together('zero'), positive: together('positive'), negative: together('negative') };
  return { grid, poles, lines: paths, labels, equator: linesPath(layout, equator), caution: zonePath(CAUTION, instant, layout), blackout: zonePath(BLACKOUT, instant, layout) };
}
