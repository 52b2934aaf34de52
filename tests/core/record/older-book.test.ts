import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { describe, it } from 'node:test';
import { nextEntry } from '../../../core/record/chain.js';
import { prepareEntry } from '../../../core/record/prepare-entry.js';
import { recordFromCsv, recordToCsv } from '../../../core/record/record-csv.js';
import { recordFromJson, recordToJson } from '../../../core/record/record-json.js';
import { standingEntries } from '../../../core/record/standing-entries.js';
import { verifyChain } from '../../../core/record/verify-chain.js';
import { reference } from '../../support/reference.js';

/** A book as an earlier release has written it to files; a newer release reads the books of older ones. */
const kept = reference<{ readonly book: string; readonly count: number; readonly last: string; readonly json: string; readonly csv: string }>('record-book-1.json');

for (const [form, read, write] of [['json', recordFromJson, recordToJson], ['csv', recordFromCsv, recordToCsv]] as const) {
  describe(`a book of an earlier release as ${form}`, () => {
    const file = read(kept[form]);

    it('is read whole, its chain unbroken, and would be written the same today', () => {
      assert.equal(file.ok, true, JSON.stringify(file));
      if (!file.ok) return;
      assert.deepEqual([file.book, file.entries.length, file.entries.at(-1)?.hash], [kept.book, kept.count, kept.last]);
      assert.deepEqual(verifyChain(file.book, file.entries), { ok: true, count: kept.count, last: kept.last });
      assert.equal(write(file.book, file.entries), kept[form]);
    });

    it('goes on with an entry of today', () => {
      assert.ok(file.ok);
      const reading = prepareEntry({ kind: 'observation', instant: '2026-11-26T09:05:20Z', headingStandard: 40, deviation: -1.3, deviationOf: 'standard' });
      assert.ok(reading.ok);
      const entries = [...file.entries, nextEntry(file.book, file.entries.at(-1) ?? null, reading.fields, new Date('2026-11-26T09:06:00Z'))];
      assert.equal(verifyChain(file.book, entries).ok, true);
    });
  });
}

it('the first hash of that book is the one the system’s own SHA-256 makes of its schema and name', () => {
  const file = recordFromJson(kept.json);
  assert.ok(file.ok);
  assert.equal(file.entries[0]?.previous, createHash('sha256').update(JSON.stringify(['lubberline-record/1', kept.book])).digest('hex'));
});

// 1.248° was kept as 1.25° by that release, which a later one would have kept as 1.24°: what stands in the book stays.
it('its figures, marks and corrections are those that were entered', () => {
  const file = recordFromCsv(kept.csv);
  assert.ok(file.ok);
  const [first, second, , event] = file.entries;
  assert.deepEqual([first?.latitude, first?.longitude, first?.target, first?.cardDate], [-48.28333, -71.70833, 'Sun', '2025-03-01']);
  assert.deepEqual([second?.deviation, second?.remarks], [1.25, '=SUM(A1:A9)\nsecond line, with "quotes"; a comma']);
  assert.deepEqual([event?.event, event?.observer], ['lightning', 'E. M.']);
  // The second and third are struck out, the seventh was observed first.
  assert.deepEqual(standingEntries(file.entries).map(({ entry }) => entry.number), [7, 1, 5, 4]);
});
