import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { csvLine, recordFromCsv, recordToCsv } from '../../../core/record/record-csv.js';
import { recordFromJson, recordToJson } from '../../../core/record/record-json.js';
import type { RecordEntry } from '../../../core/record/entry.js';
import { entryHash } from '../../../core/record/chain.js';
import { BOOK, anyBook, anyFields, anyText, bookOf } from './any-entry.js';

const files = [
  { name: 'CSV', write: recordToCsv, read: recordFromCsv },
  { name: 'JSON', write: recordToJson, read: recordFromJson },
] as const;

for (const { name, write, read } of files) {
  test(`${name}: export and import is the identity, and export again gives the same text`, () => {
    fc.assert(
      fc.property(anyBook, (entries) => {
        const text = write(BOOK, entries);
        const back = read(text);
        assert.deepEqual(back, { ok: true, book: BOOK, entries });
        assert.equal(write(BOOK, entries), text);
      }),
      { numRuns: 500 },
    );
  });

  test(`${name}: an empty book goes out and in; so does a book with a name full of marks`, () => {
    assert.deepEqual(read(write(BOOK, [])), { ok: true, book: BOOK, entries: [] });
    fc.assert(
      fc.property(anyText, anyFields, (book, fields) => {
        fc.pre(book.replace(/[^\p{L}\d=+@]/gu, '') !== '');
        const entries = bookOf([fields], book);
        const back = read(write(book, entries));
        assert.ok(back.ok);
        assert.deepEqual(back.entries, entries);
      }),
    );
  });

  test(`${name}: without its mark or its last line end it is still whole`, () => {
    const entries = bookOf(fc.sample(anyFields, { numRuns: 3, seed: 7 }));
    assert.ok(read(write(BOOK, entries).replace(/^\ufeff/, '').trimEnd()).ok);
  });

  // Bytes, not characters: what a bad disk or a careless editor changes.
  test(`${name}: every byte inside every entry, altered, is refused with the number of the entry`, () => {
    const entries = bookOf(fc.sample(anyFields, { numRuns: 3, seed: 11 }));
    const text = write(BOOK, entries);
    const bytes = new TextEncoder().encode(text);
    const edges = entries.map((_, place) => new TextEncoder().encode(write(BOOK, entries).slice(0, startOf(text, name, place + 1))).length);
    for (let at = edges[0] as number; at < bytes.length; at++) {
      const number = edges.filter((edge) => edge <= at).length;
      if (outsideEntry(name, bytes, at)) continue;
      for (const mask of [1, 0x20]) {
        const altered = bytes.slice();
        altered[at] = (altered[at] as number) ^ mask;
        const outcome = read(new TextDecoder().decode(altered));
        assert.deepEqual([outcome.ok, outcome.ok ? null : outcome.number], [false, number], `byte ${at} ^ ${mask}`);
      }
    }
  });

  test(`${name}: 5,000 mutated files: never a crash, never a partial import`, () => {
    const entries = bookOf(fc.sample(anyFields, { numRuns: 5, seed: 3 }));
    const text = write(BOOK, entries);
    let refused = 0;
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
        const mutated = mutations.reduce((now, change) => change(now), text);
        const outcome = read(mutated);
        if (outcome.ok) assert.deepEqual(outcome.entries, entries);
        else {
          refused += 1;
          assert.ok(!('entries' in outcome));
        }
        // What differs by more than white space at the ends is never taken.
        if (mutated.trim() !== text.trim()) assert.equal(outcome.ok, false);
      }),
      { numRuns: 5000, seed: 20261125 },
    );
    assert.ok(refused > 4000, `${refused} refused`);
  });

  test(`${name}: whole lines lost at the end are missed, by number; lines given twice too`, () => {
    const entries = bookOf(fc.sample(fc.constant(fc.sample(anyFields, { numRuns: 1, seed: 5 })[0]), { numRuns: 4 }) as never);
    const text = write(BOOK, entries);
    const lost = text.slice(0, startOf(text, name, 3));
    assert.deepEqual(read(lost), { ok: false, reason: 'incomplete', number: 3 });
    const twice = text.slice(0, startOf(text, name, 3)) + text.slice(startOf(text, name, 2));
    assert.deepEqual(read(twice), { ok: false, reason: 'out-of-place', number: 3 });
  });

  test(`${name}: another version of the schema, another program's file and a file saved anew are told apart`, () => {
    const text = write(BOOK, bookOf(fc.sample(anyFields, { numRuns: 2, seed: 1 })));
    const reason = (file: string): string => {
      const outcome = read(file);
      return outcome.ok ? 'taken' : outcome.reason;
    };
    assert.equal(reason(text.replace('lubberline-record/1', 'lubberline-record/2')), 'unknown-schema');
    assert.equal(reason(name === 'CSV' ? text.replaceAll(',', ';') : JSON.stringify(JSON.parse(text), null, 2)), 'not-as-exported');
    for (const foreign of ['date,heading,error\r\n2026-11-01,045,3.2W\r\n', '{"rows":[]}', '[]', 'null', '<html>', '%PDF-1.7', '\u0000\u0001']) {
      assert.equal(reason(foreign), 'not-a-record', foreign);
    }
    for (const empty of ['', ' \n', '\ufeff']) assert.equal(reason(empty), 'empty');
  });

  test(`${name}: a book forged whole with a formula for a time is refused`, () => {
    const [entry] = bookOf(fc.sample(anyFields, { numRuns: 1, seed: 2 })) as [RecordEntry];
    const unsealed = { ...entry, written: '=1+1' };
    const outcome = read(write(BOOK, [{ ...unsealed, hash: entryHash(unsealed) }]));
    assert.deepEqual(outcome, { ok: false, reason: 'altered', number: 1 });
  });
}

/** Where an entry begins; one past the last gives the end of the entries. */
function startOf(text: string, name: 'CSV' | 'JSON', number: number): number {
  if (name === 'JSON') return number === 1 ? text.indexOf('\n') + 1 : text.indexOf(`\n{"number":${number},`) + 1;
  let at = 1;
  for (let line = 0; line < number; line++) {
    let quoted = false;
    while (quoted || text[at] !== '\r' || text[at + 1] !== '\n') {
      if (text[at] === '"') quoted = !quoted;
      at += 1;
    }
    at += 2;
  }
  return at;
}

/** Commas, line ends and brackets between entries belong to none. */
function outsideEntry(name: 'CSV' | 'JSON', bytes: Uint8Array, at: number): boolean {
  const around = (from: number, to: number): string => new TextDecoder().decode(bytes.slice(from, to));
  if (name === 'JSON') return at >= bytes.length - 4 || around(at, at + 3) === ',\n{' || around(at - 1, at + 2) === ',\n{';
  return around(at, at + 2) === '\r\n' || around(at - 1, at + 1) === '\r\n';
}

type Mutation = (text: string) => string;

const mutation: fc.Arbitrary<Mutation> = fc
  .tuple(fc.constantFrom('replace', 'delete', 'insert', 'repeat', 'cut', 'swap'), fc.nat(), fc.nat(), fc.string({ unit: 'binary', maxLength: 4 }))
  .map(([kind, first, second, piece]): Mutation => (text) => {
    const at = first % (text.length + 1);
    const end = Math.min(text.length, at + (second % 40));
    switch (kind) {
      case 'replace': return text.slice(0, at) + piece + text.slice(at + piece.length);
      case 'delete': return text.slice(0, at) + text.slice(end);
      case 'insert': return text.slice(0, at) + piece + text.slice(at);
      case 'repeat': return text.slice(0, end) + text.slice(at);
      case 'cut': return text.slice(0, at);
      default: return text.slice(end) + text.slice(0, end);
    }
  });

/** What begins a formula in a spreadsheet: OWASP, CSV injection (from memory). */
const FORMULA = /^[\s"']*[=+\-@＝＋－＠\t\r]/;
const PLAIN_NUMBER = /^-?\d+(?:\.\d+)?$/;

test('no cell of any CSV begins as a formula, whether a program splits at commas, semicolons, tabs or lines', () => {
  fc.assert(
    fc.property(anyBook, (entries) => {
      const text = recordToCsv(BOOK, entries);
      for (const cell of text.split(/[,;\t|\r\n]/)) {
        const inside = cell.replace(/^"/, '');
        if (PLAIN_NUMBER.test(inside)) continue;
        assert.ok(inside.startsWith("'") || !FORMULA.test(inside), JSON.stringify(cell));
      }
    }),
    { numRuns: 1000 },
  );
});

test('no digit is lost: texts of figures, days and truth values are kept as texts, hashes are no numbers', () => {
  const [fields] = fc.sample(anyFields, { numRuns: 1, seed: 1 });
  const odd = ['007', '1e5', '4/8', '12-3', 'Nov 5', 'may-2026', 'TRUE', 'nan'];
  const lines = recordToCsv(BOOK, bookOf(odd.map((target) => ({ ...(fields as NonNullable<typeof fields>), target })))).split('\r\n').slice(1, -1);
  lines.forEach((line, place) => {
    const cells = csvLine(line, 0) ?? [];
    assert.equal(cells[10], `'${odd[place]}`);
    for (const hash of cells.slice(-2)) assert.match(hash, /^sha256:[0-9a-f]{64}$/);
  });
});
