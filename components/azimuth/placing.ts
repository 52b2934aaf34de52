import type { AltitudeSource, Limb } from '../../core/sight/altitude-source.js';
import type { AzimuthSource } from '../../core/sight/azimuth-source.js';
import type { BodyName } from '../../core/sky/body.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';

/** How the body is placed: by its name and the time, by figures of an almanac, or by its altitude. */
export const azimuthMethods = ['body', 'almanac', 'altitude'] as const;
export type AzimuthMethod = (typeof azimuthMethods)[number];

/** What an altitude is of: the true one of the centre, or what the sextant brought to the visible horizon. */
export const altitudeKinds = ['true', 'lower', 'centre', 'upper'] as const;
export type AltitudeKind = (typeof altitudeKinds)[number];

/** What the fields that place the body hold. */
export interface Placing {
  readonly method: AzimuthMethod;
  readonly body: BodyName;
  readonly altitudeOf: AltitudeKind;
  readonly side: 'east' | 'west';
  readonly state: Readonly<Record<'gha' | 'sha' | 'aries' | 'declination' | 'altitude' | 'heightOfEye', FieldState<number>>>;
}

/** Whether the body's disc or the Moon's parallax counts, so that the body must be looked up whatever is typed. */
export function needsDisc({ altitudeOf, body }: Placing): boolean {
  return altitudeOf === 'lower' || altitudeOf === 'upper' || (altitudeOf === 'centre' && body === 'Moon');
}

function altitudeSource(placing: Placing, instant: Date | null): AltitudeSource | null {
  const { state, altitudeOf, side } = placing;
  const altitude = valueOf(state.altitude);
  const declination = valueOf(state.declination);
  const heightOfEye = valueOf(state.heightOfEye);
  if (altitude === undefined || state.declination.state === 'refused') return null;
  if (altitudeOf !== 'true' && heightOfEye === undefined) return null;
  // A declination typed may be of any body: the one chosen counts for its disc alone.
  const body = declination === undefined || needsDisc(placing) ? placing.body : null;
  if (body !== null && !instant) return null;
  const seen = altitudeOf === 'true' || heightOfEye === undefined ? null : { limb: altitudeOf satisfies Limb, heightOfEye };
  return { by: 'altitude', body, altitude, side, ...(declination === undefined ? {} : { declination }), ...(seen ? { seen } : {}) };
}

/** What places the body, or null while something is missing. */
export function sourceOf(placing: Placing, instant: Date | null): AzimuthSource | null {
  const { method, body, state } = placing;
  if (method === 'body') return instant ? { by: 'body', body } : null;
  if (method === 'altitude') return altitudeSource(placing, instant);
  const declination = valueOf(state.declination);
  const [gha, sha, ghaAries] = [valueOf(state.gha), valueOf(state.sha), valueOf(state.aries)];
  if (declination === undefined) return null;
  if (gha !== undefined) return { by: 'hour-angle', gha, declination };
  return sha !== undefined && ghaAries !== undefined ? { by: 'sidereal-hour-angle', sha, ghaAries, declination } : null;
}

/** What was chosen and typed to place the body, as plain data; null what does not count. */
export function placingInputs({ method, body, altitudeOf, side, state }: Placing) {
  const almanac = method === 'almanac';
  const byAltitude = method === 'altitude';
  const number = (name: keyof Placing['state']): number | null => valueOf(state[name]) ?? null;
  return {
    method,
    body: almanac ? null : body,
    gha: almanac ? number('gha') : null,
    sha: almanac ? number('sha') : null,
    aries: almanac ? number('aries') : null,
    declination: number('declination'),
    altitude: byAltitude ? number('altitude') : null,
    altitudeOf: byAltitude ? altitudeOf : null,
    heightOfEye: byAltitude && altitudeOf !== 'true' ? number('heightOfEye') : null,
    side: byAltitude ? side : null,
  };
}
