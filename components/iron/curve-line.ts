import { wrap180 } from '../../core/angle/wrap.js';
import type { IronCurvePoint } from '../../core/iron/iron-curve.js';

export interface CurveScale {
  x(compassHeading: number): number;
  y(deviation: number): number;
}

/**
 * A curve as the path of a drawing, compass headings to the right. The headings are laid out
 * without their seam, so that the path runs on beyond 000 and 360; it is drawn a turn to
 * either side as well and cut to the frame. Where the needle is the stronger's servant the
 * path turns back on itself, which is the truth. It breaks where there is no deviation and
 * where this passes 180°.
 */
export function curvePath(curve: readonly IronCurvePoint[], { x, y }: CurveScale): string {
  const closed = curve.length > 0 ? [...curve, curve[0] as IronCurvePoint] : [];
  let path = '';
  let unrolled: number | null = null;
  let last: number | null = null;
  for (const { compassHeading, deviation } of closed) {
    if (compassHeading === null || deviation === null) {
      last = null;
      continue;
    }
    unrolled = unrolled === null ? compassHeading : unrolled + wrap180(compassHeading - unrolled);
    const joined = last !== null && Math.abs(deviation - last) <= 180;
    path += `${joined ? 'L' : 'M'}${x(unrolled).toFixed(1)} ${y(deviation).toFixed(1)}`;
    last = deviation;
  }
  return path;
}

/** The limit of the scale of deviations, degrees, that holds the curves. */
export function scaleLimit(largest: number): number {
  return [5, 10, 15, 20, 30, 45, 60, 90, 120].find((limit) => largest <= limit * 0.97) ?? 180;
}
