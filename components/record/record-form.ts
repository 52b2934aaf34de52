import type { EntryDraft, EventKind, Watch } from '../../core/record/entry.js';
import { valueOf } from '../shared/field.js';
import type { Field, FieldState } from '../shared/field.js';
import { combinedInstant } from '../shared/place-and-time.js';
import type { FormField, formFields } from './form-fields.js';

/** What became of every field of the form. */
export type FormState = { readonly [Name in FormField]: (typeof formFields)[Name] extends Field<infer Value> ? FieldState<Value> : never };

/** The choices of the form beside its fields. */
export interface FormChoices {
  readonly entry: 'observation' | 'no-observation' | 'event';
  readonly bearingBy: 'gyro' | 'standard' | 'steering';
  /** Empty while nobody has chosen: an event that did not happen would begin the statistics anew. */
  readonly event: EventKind | '';
  readonly watch: Watch | '';
  /** Number of the entry to be struck out; 0 for a new entry. */
  readonly corrects: number;
  /** Whether a correction puts something in the place of what it strikes out. */
  readonly replaces: boolean;
}

/** Fields that count for each kind of entry. */
const observationOnly: readonly FormField[] = [
  'headingGyro', 'headingStandard', 'headingSteering', 'target', 'bearing', 'trueBearing', 'variation', 'variationSource', 'cardDeviation', 'gyroError', 'heel',
];

export function fieldsFor(choices: FormChoices): readonly FormField[] {
  if (choices.corrects > 0 && !choices.replaces) return ['observer', 'remarks'];
  const common: readonly FormField[] = ['date', 'time', 'latitude', 'longitude', 'observer', 'remarks'];
  return choices.entry === 'observation' ? [...common, ...observationOnly] : common;
}

/** Number or null of a field, if it counts for this kind of entry. */
function figure(state: FormState, counted: readonly FormField[], name: FormField): number | null {
  const value = counted.includes(name) ? valueOf(state[name] as FieldState<number>) : undefined;
  return value ?? null;
}

/** What the form says as a draft; null while its date or time is missing. `struck` gives a bare striking-out its time. */
export function draftOfForm(state: FormState, choices: FormChoices, struck: string | null): EntryDraft | null {
  const counted = fieldsFor(choices);
  const instant = counted.includes('date') ? combinedInstant(state.date, state.time) : struck;
  if (instant === null) return null;
  const number = (name: FormField): number | null => figure(state, counted, name);
  const text = (name: FormField): string => (counted.includes(name) ? (valueOf(state[name] as FieldState<string>) ?? '') : '');
  const bare = choices.corrects > 0 && !choices.replaces;
  const observation = !bare && choices.entry === 'observation';
  const bearing = number('bearing');
  return {
    kind: choices.corrects > 0 ? 'correction' : choices.entry,
    instant,
    latitude: number('latitude'),
    longitude: number('longitude'),
    headingGyro: number('headingGyro'),
    headingStandard: number('headingStandard'),
    headingSteering: number('headingSteering'),
    method: observation ? (bearing === null ? 'comparison' : 'bearing') : '',
    target: text('target'),
    bearingBy: observation && bearing !== null ? choices.bearingBy : null,
    bearing,
    trueBearing: number('trueBearing'),
    errorGyro: number('gyroError'),
    variation: number('variation'),
    variationSource: text('variationSource'),
    cardDeviation: number('cardDeviation'),
    heel: number('heel'),
    watch: bare || choices.watch === '' ? null : choices.watch,
    observer: text('observer'),
    event: bare || choices.entry !== 'event' || choices.event === '' ? null : choices.event,
    corrects: choices.corrects > 0 ? choices.corrects : null,
    replacement: choices.corrects > 0 && choices.replaces ? choices.entry : null,
    remarks: text('remarks'),
  };
}
