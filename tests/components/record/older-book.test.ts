import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import type { LubberRecord } from '../../../components/record/record.js';
import { recordFromJson } from '../../../core/record/record-json.js';

interface Kept {
  readonly book: string;
  readonly count: number;
  readonly last: string;
  readonly json: string;
}

/** The database of a book as the first release of the record made it, with the entries and the mark of an export in it. */
async function keptByThatRelease({ book, json }: Kept): Promise<void> {
  const file = recordFromJson(json);
  if (!file.ok) throw new Error(file.reason);
  await new Promise<void>((resolve, reject) => {
    const opening = indexedDB.open(`lubberline-record:${book}`, 1);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore('entries', { keyPath: 'number' });
      opening.result.createObjectStore('marks');
    };
    opening.onerror = () => reject(new Error('no database'));
    opening.onsuccess = () => {
      const writing = opening.result.transaction(['entries', 'marks'], 'readwrite');
      for (const entry of file.entries) writing.objectStore('entries').add(entry);
      writing.objectStore('marks').put({ count: 4, at: '2025-11-06T09:00:00.000Z' }, 'exported');
      writing.oncomplete = () => {
        opening.result.close();
        resolve();
      };
    };
  });
}

describe('a book kept in this browser by an earlier release', () => {
  it('is opened where it is, found whole, and gone on with', async () => {
    const kept = (await (await fetch(new URL('../../reference/record-book-1.json', import.meta.url))).json()) as Kept;
    indexedDB.deleteDatabase(`lubberline-record:${kept.book}`);
    await keptByThatRelease(kept);
    const element = await fixture<LubberRecord>(html`<lubber-record book=${kept.book}></lubber-record>`);
    await element.whole;
    const { keeps, count, last, complete, broken, unexported } = element.result ?? {};
    expect({ keeps, count, last, complete, broken, unexported }).to.deep.equal({ keeps: 'database', count: kept.count, last: kept.last, complete: true, broken: null, unexported: kept.count - 4 });
    expect(await element.exportText('json')).to.equal(kept.json);
    const outcome = await element.appendEntry({ kind: 'no-observation', instant: '2026-11-26T08:00:00Z', remarks: 'overcast' });
    expect(outcome.saved && outcome.entry.previous).to.equal(kept.last);
    // The file of that release adds nothing to it, and takes nothing away.
    expect(await element.importText(kept.json)).to.deep.equal({ ok: true, added: 0 });
  });
});
