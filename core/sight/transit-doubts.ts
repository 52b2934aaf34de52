import { atan2Degrees, cosDegrees, degreesOfArc, sinDegrees } from '../angle/trigonometry.js';
import type { DoubtItem } from '../working/doubt.js';
import { quantity } from '../working/quantity.js';
import { usualDoubts } from './sight-doubts.js';
import type { TransitLine, TrueLine } from './transit-line.js';

/** What is supposed of a bearing of marks, each one standard deviation. */
export interface TransitDoubts {
  /** Of a bearing read from the compass, degrees. */
  readonly reading: number;
  /** Of a charted bearing, degrees. */
  readonly charted: number;
  /** Of the place of each mark in each direction, metres. */
  readonly marks: number;
  /** Of the ship's place in each direction, metres. */
  readonly ship: number;
  /** How far two marks may stand open and still look in line, minutes of arc. */
  readonly opening: number;
}

/**
 * Common practice, no source: half a degree for a bearing read at sea, charted bearings printed
 * to the half degree at worst, marks and ship from a chart and a satellite receiver; the eye
 * parts one minute of arc (from memory).
 */
export const usualTransitDoubts: TransitDoubts = { reading: usualDoubts.reading, charted: 0.15, marks: 10, ship: 20, opening: 1 };

/**
 * Beyond three times the distance between the marks a transit is no longer sensitive (from
 * memory, seamanship manuals); where the ship's place is not known it is supposed to be there.
 */
export const SENSITIVE_RATIO = 3;

export interface DoubtedLine extends TrueLine {
  readonly kind: TransitLine['kind'];
}

/**
 * Marks that look in line while they stand open by a small angle: the ship is off the line by
 * angle × d (d + b) / b, and the front mark bears wrong by angle × (d + b) / b, where b is the
 * distance between the marks and d that to the front one. Plane geometry, our own working.
 */
export function sensitivity(markDistance: number, shipDistance: number | null, openingMinutes: number): { offLine: number; bearing: number } {
  const distance = shipDistance ?? SENSITIVE_RATIO * markDistance;
  const bearing = ((openingMinutes / 60) * (distance + markDistance)) / markDistance;
  return { bearing: Math.min(bearing, 90), offLine: distance * sinDegrees(Math.min(bearing, 90)) };
}

/** What ship and mark, each placed wrong by so many metres, do to the bearing of a mark so far away, degrees. */
export const turnOfMark = (ship: number, mark: number, shipDistance: number): number => turnOf(Math.hypot(ship, mark), shipDistance);

/** What places of two marks, each wrong by so many metres, do to the bearing of their line, degrees. */
export const turnOfMarks = (metres: number, markDistance: number): number => turnOf(Math.SQRT2 * metres, markDistance);

/** What places wrong by so many metres do to the bearing of a line so long, degrees, at most a right angle. */
const turnOf = (metres: number, length: number): number => atan2Degrees(metres, length);

function markEffect(line: DoubtedLine, doubts: TransitDoubts): number {
  if (line.kind === 'charted') return 0;
  if (line.markDistance !== null) return turnOfMarks(doubts.marks, line.markDistance);
  return line.shipDistance === null ? 0 : turnOf(doubts.marks, line.shipDistance);
}

/** A ship's place off in one direction turns the bearings of all single marks together, so the mean is taken before the size. */
function shipEffect(lines: readonly DoubtedLine[], doubts: TransitDoubts): number {
  let [east, north] = [0, 0];
  for (const { kind, shipDistance, trueBearing } of lines) {
    if (kind !== 'one-mark' || shipDistance === null) continue;
    east += cosDegrees(trueBearing) / shipDistance;
    north += sinDegrees(trueBearing) / shipDistance;
  }
  return Math.min(90, degreesOfArc((doubts.ship * Math.hypot(east, north)) / lines.length));
}

/** Independent causes, one for each mark: what they do to the mean of all. */
function mean(effects: readonly number[]): number {
  return Math.hypot(...effects) / effects.length;
}

/** The causes of doubt of the mean error of one or several lines; a cause that none of them has is left out. */
export function transitDoubts(lines: readonly DoubtedLine[], doubts: TransitDoubts): DoubtItem[] {
  const has = (kind: TransitLine['kind']): boolean => lines.some((line) => line.kind === kind);
  const items: DoubtItem[] = [
    { code: 'reading', cause: quantity(doubts.reading, 'angle'), effect: mean(lines.map(() => doubts.reading)) },
  ];
  if (has('charted')) {
    items.push({
      code: 'charted',
      cause: quantity(doubts.charted, 'angle'),
      effect: mean(lines.map(({ kind }) => (kind === 'charted' ? doubts.charted : 0))),
    });
  }
  if (has('two-marks') || has('one-mark')) {
    items.push({ code: 'marks', cause: quantity(doubts.marks, 'metres'), effect: mean(lines.map((line) => markEffect(line, doubts))) });
  }
  if (has('two-marks')) {
    const open = (line: DoubtedLine): number =>
      line.markDistance === null ? 0 : sensitivity(line.markDistance, line.shipDistance, doubts.opening).bearing;
    items.push({ code: 'opening', cause: quantity(doubts.opening, 'arcminutes'), effect: mean(lines.map(open)) });
  }
  if (has('one-mark')) items.push({ code: 'ship', cause: quantity(doubts.ship, 'metres'), effect: shipEffect(lines, doubts) });
  return items;
}
