import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/field-map/define.js';
import '../../../components/languages/es/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberFieldMap } from '../../../components/field-map/field-map.js';
import { must } from '../../support/in-widget.js';

/** Two languages on one page: each widget writes figures with its own decimal mark, also when it does so outside an update. */
describe('the decimal mark of a widget', () => {
  const status = (element: Element): string => element.shadowRoot?.querySelector('[role=status]')?.textContent ?? '';

  /** A widget in English draws itself, and leaves its point. */
  async function drawnInEnglish(other: LubberAmplitude): Promise<void> {
    other.requestUpdate();
    await other.updateComplete;
  }

  // A place picked on a map in Spanish was told with a point where a widget in English had drawn itself since.
  it('is its own in what a key makes it say', async () => {
    const page = await fixture(html`<div><lubber-amplitude lang="en" latitude="10.5N"></lubber-amplitude><lubber-field-map lang="es" date="2026-11-26"></lubber-field-map></div>`);
    const [other, map] = [...page.children] as [LubberAmplitude, LubberFieldMap];
    await map.updateComplete;
    const sheet = map.renderRoot.querySelector<HTMLElement>('.sheet');
    must(sheet).focus();
    await drawnInEnglish(other);
    await sendKeys({ press: 'ArrowUp' });
    await map.updateComplete;
    expect(status(map)).to.match(/\d,\d grados/).and.not.match(/\d\.\d/);
    await drawnInEnglish(other);
    await sendKeys({ press: 'Enter' });
    await map.updateComplete;
    expect(status(map)).to.match(/\d,\d′/).and.not.match(/\d\.\d/);
  });

  it('is the one it has been shown with in the answer spoken after a pause', async () => {
    const page = await fixture(html`<div>
      <lubber-amplitude lang="en" latitude="10.5N"></lubber-amplitude>
      <lubber-amplitude lang="es" latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z"></lubber-amplitude>
    </div>`);
    const [other, sight] = [...page.children] as [LubberAmplitude, LubberAmplitude];
    must(sight.renderRoot.querySelector<HTMLInputElement>('#bearing')).focus();
    await sendKeys({ type: '113,5' });
    await drawnInEnglish(other);
    // Keys that come slowly have an answer on the way spoken, too.
    for (let tries = 0; tries < 1200 && !/9,0/.test(status(sight)); tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      await drawnInEnglish(other);
    }
    expect(status(sight)).to.match(/9,0 grados este/).and.not.match(/\d\.\d/);
  });
});
