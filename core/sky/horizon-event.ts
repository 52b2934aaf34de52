import { solveTriangle } from './altitude-azimuth.js';
import { motionOn } from './body-path.js';
import { horizonCrossing } from './horizon-crossing.js';
import type { HorizonEventArguments, NoEventReason } from './horizon-crossing.js';
import { horizonRates } from './horizon-rates.js';

export type { HorizonEventArguments, NoEventReason } from './horizon-crossing.js';

export type HorizonEvent =
  | {
      readonly occurs: true;
      /** To the millisecond. */
      readonly instant: Date;
      /** True bearing of the centre, degrees [0, 360); null at the poles. */
      readonly azimuth: number | null;
      /** Degrees per minute of time, clockwise positive; null at the poles. */
      readonly azimuthRate: number | null;
    }
  | { readonly occurs: false; readonly reason: NoEventReason };

/**
 * The first rising or setting of a body within 24 h after an instant, the first second
 * left out (so the instant found is a fit `after` for the next one) and the end let in.
 * A body that only touches the horizon neither rises nor sets.
 * Throws `RangeError` naming a bad argument, `after` outside 1900-01-01 to 2100-01-01.
 * Source: the triangle, solved along the body's path between its turning points; the
 * altitudes of `horizonAltitude`.
 */
export function horizonEvent(asked: HorizonEventArguments): HorizonEvent {
  const found = horizonCrossing(asked);
  if (!found.occurs) return found;
  const { instant, path, triangle } = found;
  const { azimuth } = solveTriangle(triangle);
  return { occurs: true, instant, azimuth, azimuthRate: horizonRates(triangle, motionOn(path, instant.getTime())).azimuth };
}
