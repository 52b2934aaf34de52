import fc from 'fast-check';
import { nextEntry } from '../../../core/record/chain.js';
import type { EntryFields, RecordEntry } from '../../../core/record/entry.js';
import { readDraft } from '../../../core/record/read-draft.js';

const maybe = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(some, { freq: 2 });
const bearing = maybe(fc.double({ min: 0, max: 360, noNaN: true }));
const error = maybe(fc.double({ min: -180, max: 180, noNaN: true }));

/** What a hand, a paste or an attacker may put into a text. */
export const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.string({ unit: fc.constantFrom('=', '+', '-', '@', "'", '"', ',', ';', '\t', '\n', '\r', ' ', '|', '1', 'e', 'A', '\ufeff', '\ud800'), maxLength: 14 }),
  fc.constantFrom('=1+1', '007', '1e5', '4/8', 'Nov 5', 'TRUE', '-12.50', '@SUM(A1)', '"', "'", "''=1", ' =1', 'a;=1', 'a\n=1', 'E. M.'),
);

/** Any draft that the book takes. */
export const anyFields: fc.Arbitrary<EntryFields> = fc
  .record({
    kind: fc.constantFrom('observation', 'no-observation', 'event'),
    instant: fc.date({ min: new Date('1950-01-01'), max: new Date('2099-12-31'), noInvalidDate: true }),
    latitude: maybe(fc.double({ min: -90, max: 90, noNaN: true })),
    longitude: error,
    headingGyro: bearing,
    headingStandard: fc.double({ min: 0, max: 360, noNaN: true }),
    target: anyText.map((text) => text.slice(0, 120)),
    bearingBy: fc.constantFrom('gyro', 'standard', 'steering', null),
    bearing,
    trueBearing: bearing,
    errorStandard: error,
    variation: error,
    variationSource: anyText.map((text) => text.slice(0, 80)),
    deviation: error,
    heel: maybe(fc.double({ min: -90, max: 90, noNaN: true })),
    watch: fc.constantFrom('middle', 'dog', null),
    observer: anyText.map((text) => text.slice(0, 20)),
    remarks: anyText,
  })
  .map((draft) => {
    const reading = readDraft({ ...draft, event: draft.kind === 'event' ? 'dock' : null });
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    return reading.fields;
  });

export const BOOK = 'Halcyon Tern, standard';

/** A chained book of some fields, written a minute apart. */
export function bookOf(fields: readonly EntryFields[], book = BOOK): RecordEntry[] {
  const entries: RecordEntry[] = [];
  fields.forEach((one, place) => entries.push(nextEntry(book, entries[place - 1] ?? null, one, new Date(Date.UTC(2026, 10, 1, 0, place)))));
  return entries;
}

export const anyBook = fc.array(anyFields, { minLength: 1, maxLength: 6 }).map((fields) => bookOf(fields));
