import type { Sighting } from '../../core/sight/transit-sight.js';
import type { TransitLine } from '../../core/sight/transit-line.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import type { LineField, lineFields } from './transit-fields.js';

export type LineKind = TransitLine['kind'];

export const lineKinds: readonly LineKind[] = ['two-marks', 'charted', 'one-mark'];

/** A further line as the host sets it and as it is kept: its kind, and its fields as text or value. */
export type FurtherLine = Readonly<Partial<Record<LineField, string | number>>> & { readonly kind?: string };

type Value<F> = F extends { parse(text: string): { ok: true; value: infer T } | { ok: false } } ? T : never;

/** What became of the fields of one line. */
export type LineStates = { readonly [Name in LineField]: FieldState<Value<(typeof lineFields)[Name]>> };

export interface LineRead {
  /** Counted from 1, as they are shown. */
  readonly number: number;
  readonly kind: LineKind;
  readonly states: LineStates;
  /** The line, with or without its bearing by compass; null while parts are missing. */
  readonly line: TransitLine | null;
  readonly compassBearing: number | null;
  /** Whether nothing at all is entered. */
  readonly blank: boolean;
}

/** The fields a kind of line needs beside its bearing. */
const placed: Readonly<Record<LineKind, readonly LineField[]>> = {
  'two-marks': ['frontLatitude', 'frontLongitude', 'rearLatitude', 'rearLongitude'],
  charted: ['charted'],
  'one-mark': ['markLatitude', 'markLongitude'],
};

/** Every field a kind of line shows, in the order they stand. */
export function fieldsOf(kind: LineKind): readonly LineField[] {
  return [...placed[kind], 'bearing'];
}

export function kindNamed(text: unknown): LineKind {
  return lineKinds.find((kind) => kind === text) ?? 'two-marks';
}

function position(latitude: FieldState<number>, longitude: FieldState<number>): { latitude: number; longitude: number } | null {
  const [north, east] = [valueOf(latitude), valueOf(longitude)];
  return north === undefined || east === undefined ? null : { latitude: north, longitude: east };
}

function lineOf(kind: LineKind, states: LineStates): TransitLine | null {
  if (kind === 'charted') {
    const bearing = valueOf(states.charted);
    return bearing === undefined ? null : { kind, bearing };
  }
  if (kind === 'one-mark') {
    const mark = position(states.markLatitude, states.markLongitude);
    return mark && { kind, mark };
  }
  const front = position(states.frontLatitude, states.frontLongitude);
  const rear = position(states.rearLatitude, states.rearLongitude);
  return front && rear && { kind, front, rear };
}

/** One line from the states of its fields. */
export function readLine(number: number, kind: LineKind, states: LineStates): LineRead {
  return {
    number,
    kind,
    states,
    line: lineOf(kind, states),
    compassBearing: valueOf(states.bearing) ?? null,
    blank: fieldsOf(kind).every((name) => states[name].state === 'empty'),
  };
}

/** The sightings that are complete. */
export function sightingsOf(lines: readonly LineRead[]): { sightings: Sighting[]; used: LineRead[] } {
  const used = lines.filter((read) => read.line !== null && read.compassBearing !== null);
  const sightings = used.flatMap(({ line, compassBearing }) => (line && compassBearing !== null ? [{ line, compassBearing }] : []));
  return { sightings, used };
}
