import { parseLength } from '../../core/text/parse-length.js';
import type { Field } from '../shared/field.js';
import { gyroErrorField } from '../shared/gyro-error-field.js';
import { bearingField, dateField, errorField, latitudeField, longitudeField, numberField } from '../shared/trade-fields.js';

const radiusField: Field<number> = {
  ...numberField(0, 20_000, 10, 0, 'm', 'swing.accepted.radius'),
  parse: (text) => parseLength(text, 0, 20_000),
};

/** What is common to all headings, by the property each stands for. */
export const swingFields = {
  variation: errorField,
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  objectBearing: bearingField(''),
  circleRadius: radiusField,
  circleDistance: numberField(0.05, 100, 0.1, 2, 'M', 'swing.accepted.distance'),
  transitBearing: bearingField('T'),
  frontLatitude: latitudeField,
  frontLongitude: longitudeField,
  rearLatitude: latitudeField,
  rearLongitude: longitudeField,
  gyroError: gyroErrorField,
  shoreError: errorField,
  constant: errorField,
};

export type SwingFieldName = keyof typeof swingFields;

/** Settings that are chosen, not typed. */
export const chosenSettings = ['method', 'headingBy', 'headings', 'objectBy', 'turning', 'transitBy', 'model', 'limit', 'stages', 'stage', 'compasses'] as const;

export const markFieldNames = ['frontLatitude', 'frontLongitude', 'rearLatitude', 'rearLongitude'] as const;
