import { checkRange } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { angleFromTo, wrap360 } from '../angle/wrap.js';
import { alongGeodesic, geodesicLine } from './geodesic-line.js';
import type { NoDirection, Position } from './geodesic-line.js';
import { METRES_PER_MILE } from './line-bearing.js';
import { rhumbLine } from './rhumb-line.js';

/**
 * What a bearing ashore is taken of: two marks in line, seen over the front one; a line whose
 * true bearing the chart prints, as seen from the ship; or one mark, from the ship's place.
 */
export type TransitLine =
  | { readonly kind: 'two-marks'; readonly front: Position; readonly rear: Position }
  | { readonly kind: 'charted'; readonly bearing: number }
  | { readonly kind: 'one-mark'; readonly mark: Position };

/** Where the ship stands beside a line of two marks. */
export interface ShipOnLine {
  /** `before` the front mark, `between` the two, `behind` the rear one, or too `far` to see either. */
  readonly side: 'before' | 'between' | 'behind' | 'far';
  /** How far to the right of the line, facing the marks, metres; 0 where the ship is too far to say. */
  readonly offLine: number;
}

/** The true bearing of a line at the ship and what it rests on. */
export interface TrueLine {
  /** Degrees [0, 360), by the geodesic at the ship's place, or as charted. */
  readonly trueBearing: number;
  /** The same by the rhumb line, as measured on a Mercator chart; null where there is none. */
  readonly rhumbBearing: number | null;
  /** From front mark to rear, metres; null where there are not two. */
  readonly markDistance: number | null;
  /** From the ship to the mark, or to the front one, metres; null where a place is not known. */
  readonly shipDistance: number | null;
  readonly ship: ShipOnLine | null;
}

/** No mark ashore is seen farther than this, nautical miles: a high summit from a high bridge. Common practice, no source. */
const SIGHT_LIMIT = 60;

export function beyondSight(metres: number): boolean {
  return metres > SIGHT_LIMIT * METRES_PER_MILE;
}

function rhumbBearing(from: Position, to: Position): number | null {
  const line = rhumbLine(from, to);
  return line.determined ? line.bearing : null;
}

type NoLine = { readonly determined: false; readonly reason: NoDirection };
/** The line a bearing was taken of, or why it has no direction. */
export type FoundLine = { readonly determined: true; readonly line: TrueLine } | NoLine;

/** How far before the front mark the ship stands along the line and to its right, metres. */
function placeBeside(front: Position, towardsRear: number, markDistance: number, ship: Position): { shipOnLine: ShipOnLine; distance: number; before: number } {
  const toShip = geodesicLine(front, ship);
  const { distance } = toShip;
  if (!toShip.determined || beyondSight(distance)) {
    return { shipOnLine: { side: toShip.determined ? 'far' : 'before', offLine: 0 }, distance, before: 0 };
  }
  // Within sight the earth is flat enough for which side and how far.
  const angle = angleFromTo(wrap360(towardsRear + 180), toShip.bearing);
  const before = distance * cosDegrees(angle);
  const side = before >= 0 ? 'before' : before > -markDistance ? 'between' : 'behind';
  // Clockwise of seaward is left of the line for one who faces the marks.
  return { shipOnLine: { side, offLine: -distance * sinDegrees(angle) }, distance, before: Math.max(0, before) };
}

/** Two marks: the direction of their geodesic where it passes the ship, for it turns as it goes. */
function twoMarks(front: Position, rear: Position, ship: Position | undefined): FoundLine {
  const outward = geodesicLine(front, rear);
  if (!outward.determined) return outward;
  const markDistance = outward.distance;
  const rhumb = rhumbBearing(front, rear);
  const known = { trueBearing: outward.bearing, rhumbBearing: rhumb, markDistance };
  if (!ship) return { determined: true, line: { ...known, shipDistance: null, ship: null } };
  const { shipOnLine, distance, before } = placeBeside(front, outward.bearing, markDistance, ship);
  const back = geodesicLine(rear, front);
  const trueBearing = back.determined && before > 0 ? wrap360(alongGeodesic(rear, back.bearing, markDistance + before).bearing + 180) : outward.bearing;
  return { determined: true, line: { ...known, trueBearing, shipDistance: distance, ship: shipOnLine } };
}

/**
 * The true bearing of a line as the ship sees it; or why there is none. One mark needs the
 * ship's place. Throws `RangeError` naming a bad argument.
 */
export function transitLine(line: TransitLine, ship?: Position): FoundLine {
  switch (line.kind) {
    case 'charted':
      checkRange('bearing', line.bearing, 0, 360);
      return {
        determined: true,
        line: { trueBearing: wrap360(line.bearing), rhumbBearing: null, markDistance: null, shipDistance: null, ship: null },
      };
    case 'two-marks':
      return twoMarks(line.front, line.rear, ship);
    case 'one-mark': {
      if (!ship) throw new RangeError('ship: the bearing of one mark needs a place');
      const found = geodesicLine(ship, line.mark);
      if (!found.determined) return found;
      const { bearing: trueBearing, distance: shipDistance } = found;
      return {
        determined: true,
        line: { trueBearing, rhumbBearing: rhumbBearing(ship, line.mark), markDistance: null, shipDistance, ship: null },
      };
    }
    default:
      throw new RangeError(`line.kind: ${String((line as TransitLine).kind)} is none`);
  }
}
