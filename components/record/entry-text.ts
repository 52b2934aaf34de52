import type { EntryFields, RecordEntry } from '../../core/record/entry.js';
import { entryFields } from '../../core/record/entry-fields.js';
import { bodyName } from '../shared/body-name.js';
import { formatAngle, formatBearing, formatError, formatLatitude, formatLongitude, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** Day and time of an instant as they stand in a table: `2026-11-26`, `08:52`. */
export function shortInstant(instant: string): { readonly day: string; readonly time: string } {
  return { day: instant.slice(0, 10), time: instant.slice(11, 16) };
}

/** Numbers of angle keep a second decimal only where it says something. */
const decimals = (value: number): number => (Math.abs(value * 10 - Math.round(value * 10)) < 1e-6 ? 1 : 2);

const bearingInFull = (value: number): string => formatBearing(value, decimals(value));
const errorInFull = (value: number): string => formatError(value, decimals(value));

/** For the columns of a table: a tenth is what a compass is read to. */
export const bearingText = (value: number | null): string => (value === null ? '' : formatBearing(value));

const writers: Partial<Record<keyof EntryFields, (value: number) => string>> = {
  latitude: (value) => formatLatitude(value),
  longitude: (value) => formatLongitude(value),
  heel: (value) => `${formatNumber(value, 1)}°`,
  doubt: (value) => `±\u00a0${formatAngle(value, 2)}`,
  corrects: (value) => String(value),
};

/** A method by its name in the page's language; one the book does not know stays as it was written. */
function methodText(host: LubberElement, method: string): string {
  const key = `record.method.${method}`;
  const text = host.t(key);
  return text === key ? method : text;
}

/** One field of an entry as the book shows it; empty where nothing was observed. */
export function fieldInWords(host: LubberElement, entry: RecordEntry, name: keyof EntryFields): string {
  const value = entry[name];
  if (value === null || value === '') return '';
  if (typeof value === 'number') {
    const writer = writers[name];
    return writer ? writer(value) : /^heading|earing$/.test(name) ? bearingInFull(value) : errorInFull(value);
  }
  const group = { kind: 'record.kind', replacement: 'record.kind', event: 'record.event', watch: 'record.watch', bearingBy: 'record.compass', deviationOf: 'record.compass' }[
    name as 'kind'
  ];
  if (group) return host.t(`${group}.${value}`);
  if (name === 'target') return bodyName(host, value);
  if (name === 'method') return methodText(host, value);
  return name === 'instant' ? value.replace('T', ' ').replace('Z', '') : value;
}

/** The fields of an entry that hold something, each with its name. */
export function filledFields(host: LubberElement, entry: RecordEntry): { name: keyof EntryFields; label: string; text: string }[] {
  return entryFields
    .map(([name]) => ({ name, label: host.t(`field.${name}`), text: fieldInWords(host, entry, name) }))
    .filter(({ text }) => text !== '');
}
