import { parseSignedAngle } from '../../core/angle/parse-signed-angle.js';
import { formatNumber } from '../../core/angle/format-angle.js';
import { wrap360 } from '../../core/angle/wrap.js';
import { refused, understood, within } from '../../core/text/reading.js';
import { doubtFields } from '../shared/doubt-fields.js';
import type { Field } from '../shared/field.js';
import { formatAngle } from '../shared/figures.js';
import {
  altitudeField,
  bearingField,
  dateField,
  declinationField,
  errorField,
  heightOfEyeField,
  latitudeField,
  longitudeField,
  timeField,
} from '../shared/trade-fields.js';

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
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
  gha: hourAngleField,
  sha: hourAngleField,
  aries: hourAngleField,
  declination: declinationField,
  altitude: altitudeField,
  heightOfEye: heightOfEyeField,
  bearing: bearingField('C'),
  heading: bearingField('C'),
  variation: errorField,
  cardDeviation: errorField,
  doubtReading: doubtFields.doubtReading,
  doubtPosition: doubtFields.doubtPosition,
  doubtTime: doubtFields.doubtTime,
  doubtTilt: doubtFields.doubtTilt,
};
