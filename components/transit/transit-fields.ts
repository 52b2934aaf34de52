import { normalise } from '../../core/text/normalise.js';
import { refused, understood } from '../../core/text/reading.js';
import type { Field } from '../shared/field.js';
import { bearingField, dateField, errorField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';

/** The name of a mark, for the record: any words of one line. */
const nameField: Field<string> = {
  parse: (text) => (normalise(text) === '' ? refused('empty') : understood(text.trim())),
  write: (value) => value,
  show: () => '',
  optional: true,
  accepted: 'accepted.markName',
};

/** The fields of one line ashore. */
export const lineFields = {
  markName: nameField,
  frontLatitude: latitudeField,
  frontLongitude: longitudeField,
  rearLatitude: latitudeField,
  rearLongitude: longitudeField,
  charted: bearingField('T'),
  markLatitude: latitudeField,
  markLongitude: longitudeField,
  bearing: bearingField('C'),
};

export type LineField = keyof typeof lineFields;

/** The fields that all lines share. */
export const commonFields = {
  heading: bearingField('C'),
  variation: errorField,
  cardDeviation: errorField,
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
};

export const transitFields = { ...lineFields, ...commonFields };
