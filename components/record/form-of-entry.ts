import type { RecordEntry } from '../../core/record/entry.js';
import type { FieldInput } from '../shared/field.js';
import { formFields } from './form-fields.js';
import type { FormField } from './form-fields.js';

/** The text of a form's fields that would give an entry again; for its correction. */
export function formOfEntry(entry: RecordEntry): Readonly<Record<FormField, FieldInput>> {
  const write = (name: FormField, value: number | null): string | undefined =>
    value === null ? undefined : (formFields[name].write as (value: number) => string)(value);
  return {
    date: entry.instant.slice(0, 10),
    time: entry.instant.slice(11, 19),
    latitude: write('latitude', entry.latitude),
    longitude: write('longitude', entry.longitude),
    headingGyro: write('headingGyro', entry.headingGyro),
    headingStandard: write('headingStandard', entry.headingStandard),
    headingSteering: write('headingSteering', entry.headingSteering),
    target: entry.target,
    bearing: write('bearing', entry.bearing),
    trueBearing: write('trueBearing', entry.trueBearing),
    variation: write('variation', entry.variation),
    variationSource: entry.variationSource,
    cardDeviation: write('cardDeviation', entry.cardDeviation),
    // Worked out anew from the bearing where there was one.
    gyroError: entry.bearingBy === 'gyro' && entry.bearing !== null ? undefined : write('gyroError', entry.errorGyro),
    heel: write('heel', entry.heel),
    observer: undefined,
    remarks: undefined,
  };
}

/** What the form forgets once an entry is saved: all that belongs to one observation. The observer and the variation stay. */
export const forgotten: readonly FormField[] = [
  'date', 'time', 'latitude', 'longitude', 'headingGyro', 'headingStandard', 'headingSteering', 'target', 'bearing', 'trueBearing', 'cardDeviation',
  'gyroError', 'heel', 'remarks',
];
