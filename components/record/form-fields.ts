import { gyroErrorField } from '../shared/gyro-error-field.js';
import { bearingField, dateField, errorField, latitudeField, longitudeField, numberField, timeField } from '../shared/trade-fields.js';
import { textField } from './text-field.js';

/** The fields of the form by the property each stands for. */
export const formFields = {
  date: dateField,
  time: timeField,
  latitude: latitudeField,
  longitude: longitudeField,
  headingGyro: bearingField('G'),
  headingStandard: bearingField('C'),
  headingSteering: bearingField('C'),
  target: textField(120),
  bearing: bearingField(''),
  trueBearing: bearingField('T'),
  variation: errorField,
  variationSource: textField(80),
  cardDeviation: errorField,
  gyroError: gyroErrorField,
  heel: numberField(-60, 60, 0.5, 1, '°', 'accepted.heel'),
  observer: textField(20),
  remarks: textField(2000),
} as const;

export type FormField = keyof typeof formFields;
