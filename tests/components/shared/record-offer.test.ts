import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import '../../../components/azimuth/define.js';
import '../../../components/ship/define.js';
import '../../../components/transit/define.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { must } from '../../support/in-widget.js';

const text = (element: Element): string => (element.shadowRoot?.querySelector('.frame')?.textContent ?? '').replace(/\s+/g, ' ');

async function offer(element: LubberElement): Promise<void> {
  await element.updateComplete;
  must([...(element.shadowRoot as ShadowRoot).querySelectorAll('button')].find(({ textContent }) => textContent.trim() === 'Enter in the record')).click();
  await element.updateComplete;
}

const NONE = 'There is no record book here: nothing was kept.';

/** What is seen beside the button, and what assistive technology is told. */
function said(element: LubberElement): readonly (string | undefined)[] {
  const root = element.shadowRoot as ShadowRoot;
  return [root.querySelector('.after .hint')?.textContent, root.querySelector('[role=status]')?.textContent];
}

describe('"Enter in the record" where nobody listens', () => {
  const sights = [
    html`<lubber-amplitude latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090"></lubber-amplitude>`,
    html`<lubber-azimuth latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" bearing="100"></lubber-azimuth>`,
    html`<lubber-azimuth latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" series="09:30 100
09:31 100.2
09:32 100.1"></lubber-azimuth>`,
    html`<lubber-transit latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" kind="charted" charted="100" bearing="101"></lubber-transit>`,
  ];
  // It once said nothing at all to the eye, and "Offered to the record book" to the ear.
  it('says that there is no record book and that nothing was kept, until something is changed', async () => {
    for (const sight of sights) {
      const element = await fixture<LubberElement>(sight);
      await offer(element);
      expect(said(element)).to.deep.equal([NONE, NONE]);
      element.change(element.localName === 'lubber-azimuth' ? 'latitude' : 'bearing', '11');
      await element.updateComplete;
      expect(said(element)[0]).to.equal(undefined);
    }
  });

  // A live region whose text is set to what it says already says nothing.
  it('is said aloud again when it is pressed again', async () => {
    const element = await fixture<LubberElement>(sights[0] ?? html``);
    await offer(element);
    const heard: string[] = [];
    const status = element.renderRoot.querySelector('[role=status]') as Element;
    const ear = new MutationObserver(() => heard.push((status.textContent ?? '').trim()));
    ear.observe(status, { characterData: true, childList: true, subtree: true });
    for (let again = 0; again < 3; again += 1) await offer(element);
    ear.disconnect();
    expect(heard).to.deep.equal([NONE, NONE, NONE]);
  });

  it('says so inside a ship without a book too', async () => {
    const ship = await fixture(html`<lubber-ship><lubber-amplitude latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090"></lubber-amplitude></lubber-ship>`);
    const element = ship.querySelector('lubber-amplitude') as LubberElement;
    await offer(element);
    expect(text(element)).to.contain(NONE);
  });

  it('takes a page that reads the entry for a keeper, and one that only looks on for none', async () => {
    const element = await fixture<LubberElement>(sights[0] ?? html``);
    element.addEventListener('lubber-record-request', (event) => event.type, { once: true });
    await offer(element);
    expect(said(element)[0]).to.equal(NONE);
    element.addEventListener('lubber-record-request', ({ detail }) => detail.entry, { once: true });
    await offer(element);
    expect(said(element)[0]).to.equal('Offered to the record book.');
  });
});
