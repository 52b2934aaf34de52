import { deviationTableField } from '../shared/deviation-table-field.js';
import type { StatesOf } from '../shared/field.js';
import { bearingField, dateField, errorField, heightOfEyeField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';

/** The fields of a ship by the property each stands for. */
export const shipFields = {
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
  heightOfEye: heightOfEyeField,
  heading: bearingField('C'),
  variation: errorField,
  table: deviationTableField,
  coefficientA: errorField,
  coefficientB: errorField,
  coefficientC: errorField,
  coefficientD: errorField,
  coefficientE: errorField,
};

export type ShipStates = StatesOf<typeof shipFields>;

/** What the widgets inside share. */
export const sharedNames = ['latitude', 'longitude', 'date', 'time', 'heightOfEye', 'heading', 'variation'] as const;
