import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import type { LubberRecord } from '../../../components/record/record.js';
import { input, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

const told = (record: LubberRecord): string => [...root(record).querySelectorAll('.told')].map((each) => each.textContent).join('');

/** A book with an observation in its form. */
async function filled(): Promise<{ record: LubberRecord; enter: () => void }> {
  const record = await fixture<LubberRecord>(html`<lubber-record book=${`slow ${Date.now()}`} date="2026-11-20" time="0905" heading-standard="085" bearing="061" true-bearing="060"></lubber-record>`);
  await record.whole;
  await record.updateComplete;
  return { record, enter: () => root(record).querySelector<HTMLButtonElement>('.form .main')!.click() };
}

/** Types over a field in the same moment. */
function write(record: LubberRecord, name: string, text: string): void {
  const field = input(record, name);
  field.value = text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
}

describe('an entry that is being written', () => {
  // On a slow disk the next observation was begun, and was gone when the entry before it was told as saved.
  it('leaves alone what is typed meanwhile', async () => {
    const { record, enter } = await filled();
    enter();
    write(record, 'bearing', '077');
    await until(() => told(record) === 'Saved as No. 1.');
    await record.updateComplete;
    expect([input(record, 'bearing').value, record.bearing, input(record, 'trueBearing').value]).to.deep.equal(['077', '077', '']);
    expect(record.entries[0]?.bearing).to.equal(61);
  });

  // Pressed twice it was saved, and then told as not saved: "the same stands in the book already".
  it('is told as saved, though the button be pressed twice', async () => {
    const { record, enter } = await filled();
    const heard: string[] = [];
    const status = root(record).querySelector('.form .told') as HTMLElement;
    new MutationObserver(() => heard.push(told(record))).observe(status, { childList: true, characterData: true, subtree: true });
    enter();
    enter();
    await until(() => told(record) !== '');
    // An entry after it is behind whatever the second press set going.
    await record.appendEntry({ kind: 'no-observation', instant: '2026-11-20T10:00:00Z', remarks: 'overcast' });
    await until(() => told(record) === 'Saved as No. 2.');
    // The page's own entry is told at the head of the book, and the line below the button is empty again.
    expect(heard).to.deep.equal(['Saved as No. 1.', 'Saved as No. 2.']);
    expect(record.entries.length).to.equal(2);
  });
});
