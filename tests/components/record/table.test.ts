import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import type { LubberRecord } from '../../../components/record/record.js';
import { flat, must } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

let books = 0;

async function open(more: Partial<LubberRecord> = {}): Promise<LubberRecord> {
  const element = await fixture<LubberRecord>(html`<lubber-record book=${`table ${Date.now()} ${(books += 1)}`}></lubber-record>`);
  Object.assign(element, more);
  await element.whole;
  await element.updateComplete;
  return element;
}

const texts = (element: LubberRecord, selector: string): string[] => [...element.renderRoot.querySelectorAll(selector)].map(flat);

describe('the table of a record book', () => {
  // By hand: true 122.5 less bearing 113.5 is an error of 9.0 E; less variation 10.2 E, deviation 1.2 W; less a card of 1.4 W, 0.2 E.
  it('has a head over each figure of an observation', async () => {
    const element = await open();
    await element.appendEntry({
      kind: 'observation',
      instant: '2026-11-26T08:52:40Z',
      method: 'amplitude',
      target: 'Sun',
      bearingBy: 'standard',
      bearing: 113.5,
      trueBearing: 122.5,
      headingStandard: 40,
      variation: 10.2,
      cardDeviation: -1.4,
      observer: 'E. M.',
    });
    await until(() => texts(element, '.book tbody tr').length === 1);
    expect(texts(element, '.book thead th')).to.deep.equal(['No.', 'UTC', 'Body or mark', 'Head C', 'Bearing', 'True', 'Error', 'Variation', 'Found', 'Card', 'Diff.', 'By']);
    expect(texts(element, '.book tbody td').map((cell) => cell.replace(/\u00a0/g, ' '))).to.deep.equal([
      '1', '2026-11-26 08:52', 'Sun', '040.0°', '113.5°', '122.5°', '9.0° E', '10.2° E', '1.2° W', '1.4° W', '0.2° E', 'E. M.',
    ]);
  });

  it('tells which entries of a long book it shows, and leads no further than its ends', async () => {
    const element = await open({ pageSize: 10 });
    for (let minute = 0; minute < 23; minute += 1) {
      await element.appendEntry({ kind: 'no-observation', instant: new Date(Date.UTC(2026, 10, 20, 0, minute)), remarks: 'overcast', observer: 'E. M.' });
    }
    await until(() => texts(element, '.book tbody tr').length === 10);
    const pager = (): HTMLElement => must(element.renderRoot.querySelector<HTMLElement>('.pager'));
    const seen = (): string => `${flat(pager().querySelector('span'))}; ${texts(element, '.book tbody td:first-child').join(' ')}; ${[...pager().querySelectorAll('button')].filter(({ disabled }) => !disabled).map(flat).join(' ')}`;
    const press = async (label: string): Promise<void> => {
      must([...pager().querySelectorAll('button')].find((one) => flat(one) === label)).click();
      await element.updateComplete;
    };
    const newest = '23 to 14 of 23; 23 22 21 20 19 18 17 16 15 14; Older Oldest';
    const middle = '13 to 4 of 23; 13 12 11 10 9 8 7 6 5 4; Newest Newer Older Oldest';
    const oldest = '3 to 1 of 23; 3 2 1; Newest Newer';
    expect(seen()).to.equal(newest);
    await press('Older');
    expect(seen()).to.equal(middle);
    await press('Older');
    expect(seen()).to.equal(oldest);
    await press('Newer');
    expect(seen()).to.equal(middle);
    await press('Oldest');
    expect(seen()).to.equal(oldest);
    await press('Newest');
    expect(seen()).to.equal(newest);
  });

  it('keeps the watch that was chosen, none where none was, and that two heads were compared', async () => {
    const element = await open();
    const enter = async (time: string, watch: string): Promise<void> => {
      Object.assign(element, { date: '2026-11-20', time, entry: 'observation', headingStandard: '040', headingGyro: '055', variation: '10E', gyroError: '0' });
      await element.updateComplete;
      const select = must(element.renderRoot.querySelector<HTMLSelectElement>('#watch'));
      select.value = watch;
      select.dispatchEvent(new Event('change', { bubbles: true }));
      await element.updateComplete;
      const before = element.entries.length;
      must([...element.renderRoot.querySelectorAll('button')].find((one) => flat(one) === 'Enter in the book')).click();
      await until(() => element.entries.length === before + 1, () => flat(element.renderRoot.querySelector('.told')));
    };
    await enter('0905', 'forenoon');
    await enter('0915', '');
    expect(element.entries.map(({ watch, method }) => [watch, method])).to.deep.equal([['forenoon', 'comparison'], [null, 'comparison']]);
  });
});
