import { magneticModelYears } from '../../core/field/magnetic-models.js';
import { ironParameterNames } from '../../core/iron/iron-parameters.js';
import { decimalYear } from '../../core/time/decimal-year.js';
import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import type { Field } from '../shared/field.js';
import { bearingField, dateField, latitudeField, longitudeField, numberField } from '../shared/trade-fields.js';
import { placeFieldName, placeNames } from './place-names.js';

/** A slider's reach: what a real ship may have; the field beside it takes more. */
export interface Reach {
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

const rod = numberField(-10, 10, 0.01, 4, '', 'accepted.rod');
const permanent = numberField(-500, 500, 0.1, 3, 'µT', 'accepted.permanent');
const force = numberField(0, 500, 0.1, 3, 'µT', 'accepted.magnet');
const coefficient = numberField(-60, 60, 0.1, 2, '°', 'accepted.benchCoefficient');

/** A day the magnetic models know. */
const modelDate: Field<CivilDate> = {
  ...dateField,
  parse(text) {
    const reading = dateField.parse(text);
    if (!reading.ok) return reading;
    const year = decimalYear(instantOf(reading.value, 0));
    return year >= magneticModelYears.from && year <= magneticModelYears.until ? reading : { ok: false, refusal: 'outside-models' };
  },
  accepted: 'accepted.modelDate',
};

const placeFields: Record<string, Field<number>> = {};
for (const place of placeNames) {
  placeFields[placeFieldName(place, 'latitude')] = latitudeField;
  placeFields[placeFieldName(place, 'longitude')] = longitudeField;
  placeFields[placeFieldName(place, 'horizontal')] = numberField(0, 100, 0.5, 3, 'µT', 'accepted.horizontal');
  placeFields[placeFieldName(place, 'vertical')] = numberField(-100, 100, 0.5, 3, 'µT', 'accepted.vertical');
  placeFields[placeFieldName(place, 'dip')] = numberField(-89, 89, 0.5, 2, '°', 'accepted.dip');
}

const ironFields: Record<string, Field<number>> = {};
for (const name of ironParameterNames) ironFields[name] = 'PQR'.includes(name) ? permanent : rod;

/** Every number of the bench by its name in the state. Forces in µT, lengths in cm, angles in degrees. */
export const numberFields: Readonly<Record<string, Field<number>>> = {
  ...ironFields,
  ...placeFields,
  heading: bearingField('M'),
  heel: numberField(-90, 90, 1, 1, '°', 'accepted.benchHeel'),
  slipHeading: bearingField('M'),
  slipStrength: numberField(0, 100, 1, 1, '%', 'accepted.strength'),
  sphereDiameter: numberField(0, 100, 0.5, 1, 'cm', 'accepted.sphereDiameter'),
  sphereDistance: numberField(5, 300, 0.5, 1, 'cm', 'accepted.sphereDistance'),
  sphereBearing: numberField(0, 180, 1, 1, '°', 'accepted.sphereBearing'),
  flindersStrength: numberField(0, 5, 0.01, 3, '', 'accepted.flinders'),
  foreAftForce: force,
  athwartForce: force,
  heelingForce: force,
  hereB: coefficient,
  hereC: coefficient,
  thereB: coefficient,
  thereC: coefficient,
  lambda: numberField(0.1, 2, 0.01, 3, '', 'accepted.lambda'),
};

export const benchFields = { ...numberFields, date: modelDate };

const rodReach: Reach = { least: -0.3, most: 0.3, step: 0.005 };
const permanentReach: Reach = { least: -20, most: 20, step: 0.1 };
const forceReach: Reach = { least: 0, most: 20, step: 0.1 };

export const reaches: Readonly<Record<string, Reach>> = {
  ...Object.fromEntries(ironParameterNames.map((name) => [name, 'PQR'.includes(name) ? permanentReach : rodReach])),
  heading: { least: 0, most: 359, step: 1 },
  heel: { least: -30, most: 30, step: 1 },
  slipHeading: { least: 0, most: 359, step: 1 },
  slipStrength: { least: 0, most: 50, step: 1 },
  sphereDiameter: { least: 0, most: 30, step: 0.5 },
  sphereDistance: { least: 15, most: 60, step: 0.5 },
  sphereBearing: { least: 0, most: 180, step: 1 },
  flindersStrength: { least: 0, most: 0.3, step: 0.005 },
  foreAftForce: forceReach,
  athwartForce: forceReach,
  heelingForce: { least: 0, most: 40, step: 0.1 },
};
