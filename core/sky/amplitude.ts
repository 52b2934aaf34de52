import { azimuthByAltitude } from './azimuth-by-altitude.js';

export interface AmplitudeArguments {
  /** Degrees [-90, 90], north positive. */
  readonly latitude: number;
  readonly declination: number;
  /** True altitude of the centre, degrees [-90, 90]; 0, the celestial horizon, unless given. */
  readonly altitude?: number;
}

export interface Amplitude {
  /** From east (rising) or west (setting), degrees [-90, 90], north positive. */
  readonly amplitude: number;
  /** True bearings at that altitude, degrees [0, 360). */
  readonly rising: number;
  readonly setting: number;
}

/**
 * Amplitude and the true bearings of a body at an altitude, by default 0: there
 * sin A = sin d / cos L. Null when the body does not reach the altitude, and at the poles.
 * Throws `RangeError` naming a bad argument.
 * Source: Pub. 9, American Practical Navigator, ch. 17.
 */
export function amplitude({ latitude, declination, altitude = 0 }: AmplitudeArguments): Amplitude | null {
  const bearings = azimuthByAltitude({ latitude, declination, altitude });
  return bearings && { amplitude: 90 - bearings.rising, ...bearings };
}
