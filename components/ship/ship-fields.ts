import { deviationTableField } from '../shared/deviation-table-field.js';
import type { StatesOf } from '../shared/field.js';
import type { ShipValues } from '../shared/ship-context.js';
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
  steeringTable: deviationTableField,
  coefficientA: errorField,
  coefficientB: errorField,
  coefficientC: errorField,
  coefficientD: errorField,
  coefficientE: errorField,
};

export type ShipStates = StatesOf<typeof shipFields>;

const sharedNames = ['latitude', 'longitude', 'date', 'time', 'heightOfEye', 'heading', 'variation'] as const;

/** What the widgets inside share. What is half typed or not understood here is nobody else's. */
export function sharedValues(states: ShipStates): ShipValues {
  return Object.fromEntries(sharedNames.flatMap((name) => (states[name].state === 'value' ? [[name, states[name].text]] : [])));
}
