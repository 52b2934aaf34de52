import { formatNumber, roundTo } from '../../core/angle/format-angle.js';
import { parseDeclination, parseLatitude } from '../../core/angle/parse-position.js';
import { parseSignedAngle } from '../../core/angle/parse-signed-angle.js';
import { wrap360 } from '../../core/angle/wrap.js';
import { refused, understood, within } from '../../core/text/reading.js';
import { doubtFields } from '../shared/doubt-fields.js';
import type { Field, StatesOf } from '../shared/field.js';
import { formatAngle } from '../shared/figures.js';
import { sightFields } from '../shared/sight-element.js';
import { bearingField, heightOfEyeField, latitudeField } from '../shared/trade-fields.js';

const declinationField: Field<number> = {
  ...latitudeField,
  parse: parseDeclination,
  accepted: 'accepted.declination',
};

/** An altitude above the horizon, degrees. */
const altitudeField: Field<number> = {
  ...latitudeField,
  parse: (text) => {
    const reading = parseLatitude(text);
    return reading.ok ? { ok: true, value: reading.value } : reading;
  },
  write: (value) => String(roundTo(value, 3)),
  show: (value) => formatAngle(value, 2),
  accepted: 'accepted.altitude',
};

/** An hour angle as almanacs print it, degrees [0, 360): `051 53.4` or `51.89`; west is positive. */
const hourAngleField: Field<number> = {
  parse: (text) => {
    const reading = parseSignedAngle(text, { positive: 'W', negative: 'E', most: 360, letterNeeded: false });
    if (!reading.ok) return reading;
    return reading.value < 0 ? refused('out-of-range') : understood(wrap360(reading.value));
  },
  write: (value) => formatNumber(value, 3),
  show: (value) => formatAngle(value, 2),
  step: (value, direction) => wrap360(value + direction / 60),
  accepted: 'accepted.hourAngle',
  inputMode: 'text',
};

/** An altitude by the sextant over the visible horizon: what dips further below is no sight. */
export const observedAltitudeField: Field<number> = {
  ...altitudeField,
  parse: (text) => {
    const reading = altitudeField.parse(text);
    return reading.ok ? within(reading.value, -1, 90) : reading;
  },
};

export const azimuthFields = {
  ...sightFields,
  gha: hourAngleField,
  sha: hourAngleField,
  aries: hourAngleField,
  declination: declinationField,
  altitude: altitudeField,
  heightOfEye: heightOfEyeField,
  bearing: bearingField('C'),
  doubtPosition: doubtFields.doubtPosition,
  doubtTime: doubtFields.doubtTime,
  doubtTilt: doubtFields.doubtTilt,
};

export type AzimuthStates = StatesOf<typeof azimuthFields>;
