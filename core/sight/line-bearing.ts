import { angleFromTo } from '../angle/wrap.js';
import { geodesicLine } from './geodesic-line.js';
import type { DirectedLine, Position } from './geodesic-line.js';
import { rhumbLine } from './rhumb-line.js';

/** The international nautical mile, metres (exact by definition, 1929). */
export const METRES_PER_MILE = 1852;

/** A line between two places, with its length in metres and in nautical miles. */
export type MeasuredLine = DirectedLine & { readonly nauticalMiles: number };

export interface LineBearing {
  /** The shortest line: what the eye sees along. */
  readonly geodesic: MeasuredLine;
  /** The straight line of a Mercator chart: what is measured there. */
  readonly rhumb: MeasuredLine;
  /** Bearing of the geodesic less that of the rhumb line, degrees (-180, 180]: half the convergence; null where one has none. */
  readonly halfConvergence: number | null;
}

function measured(line: DirectedLine): MeasuredLine {
  return { ...line, nauticalMiles: line.distance / METRES_PER_MILE };
}

/**
 * True bearing and distance from one place to another, by the geodesic and by the rhumb
 * line, both on WGS 84. Latitudes in [-90, 90], longitudes in [-360, 360], degrees, north and
 * east positive. What has no direction says why: the same place, a pole, two ways as short.
 * Throws `RangeError` naming `from` or `to`.
 */
export function lineBearing(from: Position, to: Position): LineBearing {
  const geodesic = measured(geodesicLine(from, to));
  const rhumb = measured(rhumbLine(from, to));
  const both = geodesic.determined && rhumb.determined;
  return { geodesic, rhumb, halfConvergence: both ? angleFromTo(rhumb.bearing, geodesic.bearing) : null };
}
