import { roundTo } from '../../core/angle/format-angle.js';
import { parseSignedAngle } from '../../core/angle/parse-signed-angle.js';
import { deviationTableField } from '../shared/deviation-table-field.js';
import type { Field } from '../shared/field.js';
import { formatAngle, formatNumber } from '../shared/figures.js';
import { gyroErrorField } from '../shared/gyro-error-field.js';
import { bearingField, errorField, latitudeField, numberField } from '../shared/trade-fields.js';

/** A coefficient: as the books write it, by sign, or by letter. */
const coefficientField: Field<number> = {
  parse: (text) => {
    const reading = parseSignedAngle(text, { positive: 'E', negative: 'W', most: 180, letterNeeded: false });
    return reading.ok ? { ok: true, value: reading.value } : reading;
  },
  write: (value) => String(roundTo(value, 2)),
  show: (value) => `${value > 0 ? '+' : ''}${formatNumber(value, 1)}°`,
  step: (value, direction) => roundTo(value + direction * 0.1, 1),
  accepted: 'accepted.coefficient',
  inputMode: 'text',
};

/** The fields of a conversion by the property each stands for. */
export const conversionFields = {
  heading: bearingField(''),
  bearing: bearingField(''),
  variation: errorField,
  deviation: errorField,
  table: deviationTableField,
  coefficientA: coefficientField,
  coefficientB: coefficientField,
  coefficientC: coefficientField,
  coefficientD: coefficientField,
  coefficientE: coefficientField,
  gyroError: gyroErrorField,
  leeway: { ...numberField(0, 90, 0.5, 1, '', 'accepted.leeway'), show: (value: number) => formatAngle(value) },
  wind: bearingField('T'),
  byHand: bearingField(''),
  speed: numberField(0, 100, 0.5, 1, 'kn', 'accepted.speed'),
  latitude: latitudeField,
  lookGyro: bearingField('G'),
  lookStandard: bearingField('C'),
  lookSteering: bearingField('C'),
};
