import { expect } from '@open-wc/testing';
import { openDatabaseStore } from '../../../components/record/database-store.js';
import { until } from '../../support/until.js';

const quiet = { blocked() {}, released() {}, terminated() {} };

describe('the database of a book', () => {
  it('an upgrade that another page blocks is told, and goes on when that page lets go', async () => {
    const name = `blocked ${Date.now()}`;
    // A page of another make that does not let go when asked to.
    const stubborn = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open(name, 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('entries', { keyPath: 'number' });
        request.result.createObjectStore('marks');
      };
      request.onsuccess = () => resolve(request.result);
    });
    let blocked = 0;
    const opening = openDatabaseStore(name, { ...quiet, blocked: () => (blocked += 1) }, 2);
    await until(() => blocked > 0);
    expect(blocked).to.equal(1);
    stubborn.close();
    const store = await opening;
    expect(await store.count()).to.equal(0);
    store.close();
  });

  it('what fails inside a transaction leaves nothing behind', async () => {
    const store = await openDatabaseStore(`failing ${Date.now()}`, quiet);
    let problem: unknown;
    await store.append(() => { throw new Error('no'); }).catch((error: unknown) => (problem = error));
    expect((problem as Error).message).to.equal('no');
    expect(await store.count()).to.equal(0);
    store.close();
  });
});
