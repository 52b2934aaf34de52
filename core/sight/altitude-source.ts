import { checkRange } from '../angle/check-number.js';
import { checkBody } from '../sky/body.js';
import type { BodyName } from '../sky/body.js';
import { dip } from '../sky/dip.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { trueAltitude } from '../sky/true-altitude.js';

export type Limb = 'centre' | 'lower' | 'upper';

/** A body placed by its altitude, without its hour angle. */
export interface AltitudeSource {
  readonly by: 'altitude';
  /** Gives declination, parallax and semidiameter at the instant; null for a body known by its declination alone. */
  readonly body: BodyName | null;
  /** Degrees, north positive; the body's where it is not given. */
  readonly declination?: number;
  /** Degrees: over the visible horizon by the sextant where `seen` is given, else the true altitude of the centre. */
  readonly altitude: number;
  /** What was brought to the horizon and from what height, metres. */
  readonly seen?: { readonly limb: Limb; readonly heightOfEye: number };
  /** The side of the meridian. */
  readonly side: 'east' | 'west';
}

/** From the altitude observed to the true one; all degrees, `semidiameter` signed as it is applied. */
export interface AltitudeCorrections {
  readonly observed: number;
  readonly dip: number;
  readonly refraction: number;
  readonly semidiameter: number;
  readonly parallax: number;
}

export interface AltitudePlace {
  readonly declination: number;
  readonly declinationFrom: 'body' | 'typed';
  /** True altitude of the centre. */
  readonly altitude: number;
  readonly corrections: AltitudeCorrections | null;
}

/** Declination and true altitude of a body placed by altitude. Throws `RangeError` naming a bad argument. */
export function altitudePlace(source: AltitudeSource, instant: Date | null): AltitudePlace {
  const { seen, altitude } = source;
  const body = source.body === null ? null : checkBody(source.body);
  if (source.side !== 'east' && source.side !== 'west') throw new RangeError(`side: ${String(source.side)} is not a side of the meridian`);
  const known = body !== null && instant !== null ? geographicalPosition(body, instant) : null;
  const declination = source.declination ?? known?.declination;
  if (declination === undefined) throw new RangeError('declination: neither given nor known from body and instant');
  checkRange('declination', declination, -90, 90);
  const declinationFrom = source.declination === undefined ? 'body' : 'typed';
  if (!seen) {
    checkRange('altitude', altitude, -90, 90);
    return { declination, declinationFrom, altitude, corrections: null };
  }
  checkRange('altitude', altitude, -1, 90);
  const { horizontalParallax = 0, semidiameter = 0 } = known ?? {};
  // A planet's disc is a point to the eye: its centre is what is observed.
  const limb = body === 'Sun' || body === 'Moon' ? seen.limb : 'centre';
  if (known === null && (limb !== 'centre' || body === 'Moon')) throw new RangeError(`instant: semidiameter and parallax of the ${body} need one`);
  const found = trueAltitude({ observedAltitude: altitude, limb, heightOfEye: seen.heightOfEye, horizontalParallax, semidiameter });
  const applied = limb === 'centre' ? 0 : limb === 'lower' ? semidiameter : -semidiameter;
  return {
    declination,
    declinationFrom,
    altitude: found.trueAltitude,
    corrections: { observed: altitude, dip: dip(seen.heightOfEye), refraction: found.refraction, semidiameter: applied, parallax: found.parallax },
  };
}
