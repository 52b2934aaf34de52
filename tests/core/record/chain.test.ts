import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import fc from 'fast-check';
import { canonicalText, entryHash, firstHash, nextEntry, recordSchema } from '../../../core/record/chain.js';
import type { RecordEntry } from '../../../core/record/entry.js';
import { entryFields } from '../../../core/record/entry-fields.js';
import { mergeBooks } from '../../../core/record/merge-books.js';
import { readDraft } from '../../../core/record/read-draft.js';
import { verifyChain } from '../../../core/record/verify-chain.js';
import { BOOK, anyBook, anyFields, bookOf } from './any-entry.js';

/** SHA-256 by Node's own OpenSSL: another implementation than the one under test. */
const openssl = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

const sample = (remarks: string) => {
  const reading = readDraft({ kind: 'observation', instant: '2026-11-26T08:52:40Z', latitude: -48.2833, bearing: 113.5, headingStandard: 359.996, remarks });
  assert.ok(reading.ok);
  return reading.fields;
};

const replaced = (entries: readonly RecordEntry[], place: number, entry: RecordEntry): RecordEntry[] =>
  entries.map((one, index) => (index === place ? entry : one));

test('the canonical text of an entry, written out by hand', () => {
  const [entry] = bookOf([sample('swell')]) as [RecordEntry];
  const expected =
    `["lubberline-record/1","1","${firstHash(BOOK)}","2026-11-01T00:00:00Z","observation","2026-11-26T08:52:40Z","-48.28330","","","0.00","","","","",` +
`"113.50",${'"",'.repeat(19)}"swell"]`; // 19 of the 31 fields stand empty between bearing and remarks
  assert.equal(canonicalText(entry), expected);
  assert.equal(entry.hash, openssl(expected));
});

test('the first hash is that of schema and name: books of different names share no entry', () => {
  assert.equal(firstHash('a'), openssl('["lubberline-record/1","a"]'));
  assert.notEqual(firstHash('a'), firstHash('b'));
});

test('any book verifies, and its hashes are those of another SHA-256', () => {
  fc.assert(
    fc.property(anyBook, (entries) => {
      assert.deepEqual(verifyChain(BOOK, entries), { ok: true, count: entries.length, last: entries[entries.length - 1]?.hash });
      for (const entry of entries) assert.equal(entry.hash, openssl(canonicalText(entry)));
    }),
  );
});

test('any field of any entry changed is found, with the number of the entry', () => {
  fc.assert(
    fc.property(anyBook, fc.nat(), fc.constantFrom(...entryFields.map(([name]) => name)), anyFields, (entries, pick, name, other) => {
      const place = pick % entries.length;
      const entry = entries[place] as RecordEntry;
      fc.pre(entry[name] !== other[name]);
      const altered = replaced(entries, place, { ...entry, [name]: other[name] });
      assert.deepEqual(verifyChain(BOOK, altered), { ok: false, number: place + 1, reason: 'altered' });
    }),
  );
});

test('an entry altered and sealed anew breaks the chain at the one after it', () => {
  const entries = bookOf([sample('one'), sample('two'), sample('three')]);
  const unsealed = { ...(entries[1] as RecordEntry), remarks: 'other' };
  const forged = replaced(entries, 1, { ...unsealed, hash: entryHash(unsealed) });
  assert.deepEqual(verifyChain(BOOK, forged), { ok: false, number: 3, reason: 'out-of-place' });
});

test('a field that is not in its form is found though its hash is right: more decimals than the book keeps, a text not trimmed, a number not its own', () => {
  const entries = bookOf([sample('one'), sample('two')]);
  const [one, two] = entries as [RecordEntry, RecordEntry];
  const sealed = (change: Partial<RecordEntry>): RecordEntry => {
    const unsealed = { ...two, ...change };
    return { ...unsealed, hash: entryHash(unsealed) };
  };
  // The canonical text has five decimals, and so the same hash.
  assert.equal(entryHash({ ...two, latitude: -48.283301 }), two.hash);
  for (const change of [{ latitude: -48.283301 }, { bearing: 360 }, { remarks: ' two' }, { written: '2026-11-01T00:00:00.000Z' }, { written: 'yesterday' }, { watch: 'noon' as 'middle' }, { longitude: -180 }, { instant: undefined as unknown as string }, { kind: undefined as unknown as 'event' }]) {
    assert.deepEqual(verifyChain(BOOK, [one, sealed(change)]), { ok: false, number: 2, reason: 'altered' }, JSON.stringify(change));
  }
  assert.deepEqual(verifyChain(BOOK, [one, sealed({ number: 3 })]), { ok: false, number: 2, reason: 'out-of-place' });
  assert.deepEqual(verifyChain(BOOK, [one, sealed({ remarks: 'other' })]).ok, true);
});

test('an entry taken out or two exchanged are found', () => {
  const entries = bookOf([sample('one'), sample('two'), sample('three')]);
  const [one, two, three] = entries as [RecordEntry, RecordEntry, RecordEntry];
  assert.deepEqual(verifyChain(BOOK, [one, three]), { ok: false, number: 2, reason: 'out-of-place' });
  assert.deepEqual(verifyChain(BOOK, [two, one, three]), { ok: false, number: 1, reason: 'out-of-place' });
  assert.deepEqual(verifyChain('another ship', entries), { ok: false, number: 1, reason: 'out-of-place' });
});

test('a chain is followed in parts by what stands before each', () => {
  const entries = bookOf([sample('one'), sample('two'), sample('three')]);
  const before = { number: 2, hash: entries[1]?.hash ?? '' };
  assert.deepEqual(verifyChain(BOOK, entries.slice(2), before), { ok: true, count: 3, last: entries[2]?.hash });
});

test('what a database may bring back instead of an entry is found, not thrown', () => {
  const [entry] = bookOf([sample('one')]) as [RecordEntry];
  for (const broken of [{ ...entry, latitude: NaN }, { ...entry, latitude: -0 }, { ...entry, remarks: undefined }, { ...entry, written: 'yesterday' }]) {
    assert.equal(verifyChain(BOOK, [broken as unknown as RecordEntry]).ok, false);
  }
});

test('books merge by their common beginning only', () => {
  const entries = bookOf([sample('one'), sample('two'), sample('three')]);
  const fork = bookOf([sample('one'), sample('else')]);
  assert.deepEqual(mergeBooks(entries.slice(0, 1), entries), { ok: true, added: entries.slice(1) });
  assert.deepEqual(mergeBooks(entries, entries.slice(0, 2)), { ok: true, added: [] });
  assert.deepEqual(mergeBooks([], entries), { ok: true, added: entries });
  assert.deepEqual(mergeBooks(entries, fork), { ok: false, number: 2 });
  assert.deepEqual(mergeBooks(fork, entries), { ok: false, number: 2 });
  // Apart from the first entry on, were it the only one.
  assert.deepEqual(mergeBooks(bookOf([sample('else')]), entries), { ok: false, number: 1 });
  assert.deepEqual(mergeBooks(entries, bookOf([sample('else')])), { ok: false, number: 1 });
});

test('a correction of an entry that is not there, a bad clock and a nameless book are refused by name', () => {
  const correction = { ...sample('reason'), kind: 'correction', corrects: 1 } as const;
  assert.throws(() => nextEntry(BOOK, null, correction, new Date(0)), /RangeError: fields\.corrects/);
  assert.throws(() => nextEntry(BOOK, null, sample(''), new Date(NaN)), RangeError);
  assert.throws(() => nextEntry(' ', null, sample(''), new Date(0)), /RangeError: book/);
});

test('fields that are none of an entry are refused by the first that is wrong; a book may have a name of 200 characters', () => {
  const bad = { ...sample(''), latitude: 91, bearing: NaN };
  assert.throws(() => nextEntry(BOOK, null, bad, new Date(0)), /^RangeError: fields\.latitude: out-of-range$/);
  assert.equal(nextEntry('x'.repeat(200), null, sample(''), new Date(0)).previous, firstHash('x'.repeat(200)));
  assert.throws(() => nextEntry('x'.repeat(201), null, sample(''), new Date(0)), /^RangeError: book/);
  // The entry itself and what comes after it are not there yet; the one before is.
  const [first] = bookOf([sample('one')]) as [RecordEntry];
  const correction = (corrects: number) => ({ ...sample('reason'), kind: 'correction' as const, corrects });
  assert.equal(nextEntry(BOOK, first, correction(1), new Date(0)).corrects, 1);
  for (const corrects of [2, 3]) assert.throws(() => nextEntry(BOOK, first, correction(corrects), new Date(0)), /^RangeError: fields\.corrects/);
});

test('the schema is versioned', () => assert.match(recordSchema, /^lubberline-record\/\d+$/));
