import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { csvLine, recordFromCsv, recordToCsv } from '../../../core/record/record-csv.js';
import { recordFromJson, recordToJson } from '../../../core/record/record-json.js';
import type { RecordEntry } from '../../../core/record/entry.js';
import { entryHash, firstHash } from '../../../core/record/chain.js';
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

  // Torn at the very end of an entry, that entry was said to have been altered.
  test(`${name}: a file torn at any place is incomplete from the entry on that is not whole, and none is said to be altered`, () => {
    const entries = bookOf(fc.sample(anyFields, { numRuns: 3, seed: 7 }));
    const text = write(BOOK, entries);
    const endOf = (number: number): number => startOf(text, name, number + 1) - (name === 'CSV' ? 2 : number < 3 ? 2 : 1);
    for (const number of [1, 2]) {
      for (const more of [0, 1, 2]) assert.deepEqual(read(text.slice(0, endOf(number) + more)), { ok: false, reason: 'incomplete', number: number + 1 }, `${number} + ${more}`);
    }
    // Torn within an entry, that entry was said to have been altered: a transfer broken off looked like a forgery.
    const from = startOf(text, name, 2);
    for (let at = from + 1; at < endOf(2); at++) assert.deepEqual(read(text.slice(0, at)), { ok: false, reason: 'incomplete', number: 2 }, String(at));
    // With anything behind it the line is whole, and not as it was written.
    assert.deepEqual(read(`${text.slice(0, endOf(2) - 1)}${text.slice(endOf(2))}`), { ok: false, reason: 'altered', number: 2 });
  });

  test(`${name}: what is added behind is out of place; an entry taken out with its count is missed by the last hash`, () => {
    const entries = bookOf(fc.sample(anyFields, { numRuns: 3, seed: 7 }));
    const text = write(BOOK, entries);
    for (const more of ['x', 'another line\r\n']) assert.deepEqual(read(text + more), { ok: false, reason: 'out-of-place', number: 4 }, more);
    assert.ok(read(`${text}\r\n \n`).ok);
    // As a forger would do it who does not know what the last hash is for; and one who changes it alone.
    const two = write(BOOK, entries.slice(0, 2));
    const [last, before] = [entries[2]?.hash ?? '', entries[1]?.hash ?? ''];
    const inHead = (file: string, from: string, to: string): string => file.slice(0, file.indexOf('\n') + 1).replace(from, to) + file.slice(file.indexOf('\n') + 1);
    assert.deepEqual(read(inHead(two, before, last)), { ok: false, reason: 'incomplete', number: 3 });
    const empty = write(BOOK, []);
    assert.deepEqual(read(`${empty}x`), { ok: false, reason: 'out-of-place', number: 1 });
    assert.deepEqual(read(inHead(empty, firstHash(BOOK), last)), { ok: false, reason: 'incomplete', number: 1 });
  });

  test(`${name}: a number or hash that is none is an altered entry, and no other is looked for in its place`, () => {
    const fields = fc.sample(anyFields, { numRuns: 2, seed: 7 });
    const entries = bookOf(fields) as [RecordEntry, RecordEntry];
    const text = write(BOOK, entries);
    const [, second] = entries;
    const altered = { ok: false, reason: 'altered', number: 2 };
    const from = startOf(text, name, 2);
    const within = (piece: string, by: string): string => text.slice(0, from) + text.slice(from).replace(piece, by);
    for (const bad of [second.previous.toUpperCase(), second.previous.slice(1), `${second.previous}0`, `0${second.previous}`, '']) assert.deepEqual(read(within(second.previous, bad)), altered, bad);
    for (const bad of [second.hash.toUpperCase(), second.hash.slice(1), `${second.hash}0`, `0${second.hash}`, '']) assert.deepEqual(read(within(second.hash, bad)), altered, bad);
    const number = name === 'CSV' ? '2,' : '"number":2,';
    for (const bad of ['2.5', '02', '2e0', '"2"', 'null', '9007199254740993']) assert.deepEqual(read(within(number, number.replace('2', bad))), altered, bad);
    // Whole and sealed, but of another book.
    assert.deepEqual(read(write(BOOK, [entries[0], bookOf(fields, 'other')[1] as RecordEntry])), { ok: false, reason: 'out-of-place', number: 2 });
    assert.deepEqual(read(write(BOOK, [entries[0], { ...second, number: 3 }])), { ok: false, reason: 'out-of-place', number: 2 });
    assert.deepEqual(read(write(BOOK, [entries[0], { ...second, hash: entries[0].hash }])), altered);
  });

  test(`${name}: a book forged whole with a formula for a time is refused`, () => {
    const [entry] = bookOf(fc.sample(anyFields, { numRuns: 1, seed: 2 })) as [RecordEntry];
    const unsealed = { ...entry, written: '=1+1' };
    const outcome = read(write(BOOK, [{ ...unsealed, hash: entryHash(unsealed) }]));
    assert.deepEqual(outcome, { ok: false, reason: 'altered', number: 1 });
  });
}

/** RFC 8259: a text of one value; a mark of byte order may be passed over (8.1), numbers and texts are of two kinds (3). */
test('JSON: a mark of byte order is passed over before the text, and nowhere in it', () => {
  const entries = bookOf(fc.sample(anyFields, { numRuns: 2, seed: 7 }));
  const text = recordToJson(BOOK, entries);
  assert.ok(recordFromJson(`\ufeff${text}`).ok);
  assert.deepEqual(recordFromJson(text.replace('"kind"', '\ufeff"kind"')), { ok: false, reason: 'altered', number: 1 });
});

test('JSON: what stands in the place of an entry and is none is refused by its number', () => {
  const text = recordToJson(BOOK, bookOf(fc.sample(anyFields, { numRuns: 2, seed: 7 })));
  for (const instead of ['null', '5', '"text"', '[]', '{}', '{"number":1}', '{']) {
    const lines = text.split('\n');
    lines[1] = `${instead},`;
    assert.deepEqual(recordFromJson(lines.join('\n')), { ok: false, reason: 'altered', number: 1 }, instead);
  }
});

test('JSON: a head that is not as it was written is told from another program’s, and an entry whose line was cut out with its comma is missed', () => {
  const entries = bookOf(fc.sample(anyFields, { numRuns: 2, seed: 7 }));
  const text = recordToJson(BOOK, entries);
  const reason = (file: string): string => {
    const outcome = recordFromJson(file);
    return outcome.ok ? 'taken' : outcome.reason;
  };
  const book = JSON.stringify(BOOK);
  for (const [from, to] of [['"count":2', '"count":"2"'], ['"count":2', '"count":-2'], ['"count":2', '"count":2.5'], ['"count":2', '"count":02'], [book, '5'], [book, '""'], [book, 'null'], [`"last":"${entries[1]?.hash ?? ''}"`, '"last":5'], ['"entries":[', '"entries":{'], ['"count":2,', '']] as const) {
    assert.ok(text.includes(from), from);
    assert.equal(reason(text.replace(from, to)), 'not-as-exported', to);
  }
  for (const other of ['{"schema":5,"entries":[\n]}', '{"schema":"other/1","book":"lubberline-record","entries":[\n]}', '{"schema":"other/1","entries":[\n]}', '{"schema":"other/1"}', '{"schema":5}', '{"schema":null}\n', '7\n']) assert.equal(reason(other), 'not-a-record', other);
  const next = text.replace('lubberline-record/1', 'lubberline-record/2');
  assert.equal(reason(JSON.stringify(JSON.parse(next))), 'unknown-schema');
  assert.equal(reason(JSON.stringify(JSON.parse(next), null, 1)), 'unknown-schema');
  assert.equal(reason(next.slice(0, next.indexOf('\n') + 9)), 'unknown-schema');
  assert.equal(reason(JSON.stringify(JSON.parse(text))), 'not-as-exported');
  const [head, first] = text.split('\n') as [string, string];
  assert.deepEqual(recordFromJson(`${head}\n${first.slice(0, -1)}\n]}\n`), { ok: false, reason: 'incomplete', number: 2 });
});

// RFC 8259: what breaks off is no JSON text. Torn in its first line it was said to be no record book at all.
test('JSON: a text that does not parse to its end is incomplete, one that does and does not fit is altered', () => {
  const text = recordToJson(BOOK, bookOf(fc.sample(anyFields, { numRuns: 2, seed: 7 })));
  for (let at = text.indexOf('"book"'); at < text.length - 1; at++) {
    const torn = text.slice(0, at);
    assert.throws(() => JSON.parse(torn) as unknown, String(at));
    const outcome = recordFromJson(torn);
    assert.equal(outcome.ok ? '' : outcome.reason, 'incomplete', String(at));
  }
  const forged = text.replace('"number":1,"written":"2', '"number":1,"written":"3');
  assert.doesNotThrow(() => JSON.parse(forged) as unknown);
  assert.deepEqual(recordFromJson(forged), { ok: false, reason: 'altered', number: 1 });
});

// Its brackets not closed, it was taken for a book without entries.
test('JSON: an empty book that is torn is refused', () => {
  const text = recordToJson(BOOK, []);
  for (const end of [1, 2]) assert.deepEqual(recordFromJson(text.slice(0, text.length - 1 - end)), { ok: false, reason: 'incomplete', number: 1 }, String(end));
});

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

/** RFC 4180, 2: cells and lines as its rules and examples write them. */
test('lines of a CSV are read by the rules of RFC 4180, and refused where quotes do not match', () => {
  const cells = (line: string): string[] | null => csvLine(line, 0);
  assert.deepEqual(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx'), ['aaa', 'bbb', 'ccc']);
  assert.deepEqual(csvLine('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', 13), ['zzz', 'yyy', 'xxx']);
  assert.deepEqual(cells('"aaa","bbb","ccc"\r\nzzz'), ['aaa', 'bbb', 'ccc']);
  assert.deepEqual(cells('"aaa","b\r\nbb","ccc"\r\nzzz'), ['aaa', 'b\r\nbb', 'ccc']);
  assert.deepEqual(cells('"aaa","b""bb","ccc"'), ['aaa', 'b"bb', 'ccc']);
  assert.deepEqual(cells('"a""""b",""""'), ['a""b', '"']);
  // Spaces are part of a cell; a cell may be empty, the last one too.
  assert.deepEqual(cells(' a , "b",'), [' a ', ' "b"', '']);
  assert.deepEqual(cells(',""\n'), ['', '']);
  assert.deepEqual(cells('a,b\nc,d'), ['a', 'b']);
  for (const bad of ['"aaa', '"aaa""', '"a"b,c', '"a" ,c', '"a","b']) assert.equal(cells(bad), null, bad);
});

/** RFC 4180, 2.6 and 2.7: what holds a comma, a quote or a line end stands in quotes; so does, for programs that split there, a semicolon: common practice, no source. */
/** What a spreadsheet reads as a formula, a number, a day or a truth value: common practice, no source (OWASP, CSV injection; from memory). */
test('what a spreadsheet would work out or read otherwise stands behind an apostrophe, and plain words do not', () => {
  const [fields] = fc.sample(anyFields, { numRuns: 1, seed: 1 });
  const written = (target: string): string => {
    const line = recordToCsv(BOOK, bookOf([{ ...(fields as NonNullable<typeof fields>), target }])).split('\r\n')[1] ?? '';
    return csvLine(line, 0)?.[10] ?? '';
  };
  for (const text of ['=1', '+1', '-1', '@A1', '＝1', '1', '5 cables', '(a)', 'Nov 5', 'may-2026', 'Nov.5', 'Nov/5', 'Nov5', 'true', 'FALSE', 'False', 'inf', 'Infinity', 'NaN']) assert.equal(written(text), `'${text}`, text);
  for (const text of ['Sun', 'Buoy No. 5', 'trueing', 'falsework', 'nanometre', 'a false light', 'Élan', '南十字']) assert.equal(written(text), text, text);
  for (const mark of ['=', '+', '-', '@', '＝', '＋', '－', '＠']) {
    for (const part of [';', ',', '|']) assert.deepEqual([written(`a${part}${mark}1`), written(`a${part} "${mark}1`), written(`a${part}b${mark}1`)], [`a${part}'${mark}1`, `a${part}' "${mark}1`, `a${part}b${mark}1`]);
  }
});

test('CSV: a head that is not as it was written is told from another program’s', () => {
  const text = recordToCsv(BOOK, bookOf(fc.sample(anyFields, { numRuns: 1, seed: 7 })));
  const reason = (file: string): string => {
    const outcome = recordFromCsv(file);
    return outcome.ok ? 'taken' : outcome.reason;
  };
  for (const [from, to] of [[BOOK, ''], [BOOK, 'x'.repeat(201)], ['written', 'Written'], [',previous,hash', ',hash,previous'], ['1 entries', '01 entries'], ['sha256:', 'SHA256:'], ['"number', '" number']] as const) {
    assert.ok(text.includes(from), from);
    assert.equal(reason(text.replace(from, to)), 'not-as-exported', to);
  }
});

test('what would part a line stands in quotes, and nothing else does', () => {
  const [fields] = fc.sample(anyFields, { numRuns: 1, seed: 1 });
  for (const [remarks, written] of [['a,b', '"a,b"'], ['a;b', '"a;b"'], ['a"b', '"a""b"'], ['a\nb', '"a\nb"'], ['a b', 'a b'], ["a'b", "a'b"], ['a|b', 'a|b'], ['', '']] as const) {
    const text = recordToCsv(BOOK, bookOf([{ ...(fields as NonNullable<typeof fields>), remarks }]));
    assert.ok(text.includes(`,${written},sha256:`), text);
  }
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
