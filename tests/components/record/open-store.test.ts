import { expect } from '@open-wc/testing';
import { openStore } from '../../../components/record/open-store.js';

const quiet = { blocked() {}, released() {}, terminated() {} };

describe('a book that the browser cannot open', () => {
  const open = IDBFactory.prototype.open;
  let asked = 0;

  /** The browser fails so many times, in this way. */
  const failing = (name: string, times: number): void => {
    IDBFactory.prototype.open = function (...wanted) {
      asked += 1;
      if (asked <= times) throw new DOMException('simulated', name);
      return open.apply(this, wanted);
    };
  };

  beforeEach(() => (asked = 0));
  afterEach(() => (IDBFactory.prototype.open = open));

  // Started again at once after a crash, it showed an empty book kept in memory.
  it('is tried again while its files are held by what is left of a crashed browser', async () => {
    failing('UnknownError', 2);
    const { store, memoryReason } = await openStore(`held ${Date.now()}`, quiet);
    expect([store.keeps, memoryReason, asked]).to.deep.equal(['database', null, 3]);
    store.close();
  });

  it('is kept in memory at once where the browser keeps none, and in the end where it never can', async () => {
    failing('SecurityError', 9);
    expect((await openStore('none', quiet)).memoryReason).to.equal('refused');
    expect(asked).to.equal(1);
    failing('UnknownError', 99);
    expect((await openStore('never', quiet)).memoryReason).to.equal('refused');
    expect(asked).to.equal(5);
  });
});
