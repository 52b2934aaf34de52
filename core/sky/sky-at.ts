import { atan2Degrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { apparentSize } from './apparent-size.js';
import type { ApparentSize } from './apparent-size.js';
import { apparentVector } from './apparent-vector.js';
import type { ApparentVector } from './apparent-vector.js';
import type { BodyName } from './body.js';
import { ephemerisAt } from './ephemeris.js';

/** The point of the Earth a body stands over, and the body's size; degrees. */
export interface GeographicalPosition extends ApparentSize {
  /** Greenwich hour angle, [0, 360), westward. */
  readonly gha: number;
  /** [-90, 90], north positive. */
  readonly declination: number;
}

/** The sky of one instant: what all bodies share is worked out once. */
export interface Sky {
  readonly ghaAries: number;
  position(body: BodyName): GeographicalPosition;
  apparent(body: BodyName): ApparentVector;
}

/** The sky of an instant that has been checked, a day past the range included. */
export function skyAt(instant: Date): Sky {
  const ephemeris = ephemerisAt(instant);
  const { ghaAries } = ephemeris;
  return {
    ghaAries,
    apparent: (body) => apparentVector(body, ephemeris),
    position: (body) => {
      const { direction, distance } = apparentVector(body, ephemeris);
      const [x, y, z] = direction;
      const { horizontalParallax, semidiameter } = apparentSize(body, distance);
      const declination = atan2Degrees(z, Math.hypot(x, y));
      return { gha: wrap360(ghaAries - atan2Degrees(y, x)), declination, horizontalParallax, semidiameter };
    },
  };
}
