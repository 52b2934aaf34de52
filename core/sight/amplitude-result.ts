import type { Caution } from '../working/caution.js';
import type { Doubt } from '../working/doubt.js';
import type { Step } from '../working/step.js';
import type { SplitError } from './split-error.js';

export type HorizonSide = 'rising' | 'setting';

/** Where the body is on the horizon, before any compass is looked at. */
export interface AmplitudeBearing {
  readonly determined: true;
  readonly side: HorizonSide;
  /** Degrees, north positive. */
  readonly latitude: number;
  readonly declination: number;
  /** True geocentric altitude of the centre at the moment, degrees. */
  readonly altitude: number;
  /** Apparent height of the centre above the visible horizon, in diameters of the body (a star or planet: of the Sun). */
  readonly centreHeight: number;
  /** Parts of that altitude in minutes of arc. */
  readonly dip: number;
  readonly refraction: number;
  readonly semidiameter: number;
  readonly parallax: number;
  /** At the moment seen, and with the centre on the celestial horizon where it reaches it; degrees, north positive. */
  readonly amplitude: number;
  readonly celestialAmplitude: number | null;
  /** Degrees [0, 360). */
  readonly trueBearing: number;
  /** How far the bearing moves for one tenth of a degree of altitude, degrees, never negative. */
  readonly perTenthOfAltitude: number;
  /** How far it moves while the body climbs or sinks for one minute, degrees, never negative. */
  readonly perMinute: number;
  /** True altitude of the centre by the time given, degrees: far from `altitude` when the time is wrong. */
  readonly altitudeByTime: number;
}

/** Why there is none: at a pole every direction is the same; elsewhere a body may not reach the altitude that day. */
export type NoAmplitude = { readonly determined: false; readonly reason: 'pole' | 'stays above' | 'stays below' };

export interface AmplitudeSight extends AmplitudeBearing, SplitError {
  /** One standard deviation of the deviation, degrees: that of the error and that of the variation; null with them. */
  readonly deviationDoubt: number | null;
  /** Of the error. */
  readonly doubt: Doubt;
  readonly steps: readonly Step[];
  /** The form of the hand tables; empty where the moment needs none. */
  readonly handSteps: readonly Step[];
  readonly cautions: readonly Caution[];
}
