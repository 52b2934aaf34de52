import { expect } from '@open-wc/testing';
import '../../../components/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { input } from '../../support/in-widget.js';

// What scripts and frameworks hand over by a slip: a property set to what it is not for. Nothing may throw into the page.

type Widget = HTMLElement & { readonly updateComplete: Promise<boolean>; readonly result: unknown };
type Properties = ReadonlyMap<PropertyKey, { readonly state?: boolean }>;

const tags = ['amplitude', 'azimuth', 'conversion', 'deviation-card', 'deviation-curve', 'drill', 'field-map', 'iron', 'record', 'ship', 'swing', 'transit', 'variation'];

/** Enough for most widgets to have an answer. The inputs are invented. */
const sight = { latitude: '51-30.0N', longitude: '003-00.0E', instant: '2026-11-26T07:30:00Z', bearing: '124', heading: '200', variation: '2E', table: '0 2E\n90 1W\n180 1E\n270 3W' };

const kinds: readonly unknown[] = [-7.25, ['bearing', null], new Date(NaN), undefined];

for (const tag of tags) {
  it(`lubber-${tag} bears a thing of any kind in any of its properties`, async () => {
    const defined = customElements.get(`lubber-${tag}`) as unknown as { readonly elementProperties: Properties };
    const names = [...defined.elementProperties].filter(([, { state }]) => !state).map(([name]) => String(name));
    expect(names.length).to.be.greaterThan(3);
    const widget = document.createElement(`lubber-${tag}`) as Widget;
    const properties = widget as unknown as Record<string, unknown>;
    Object.assign(properties, Object.fromEntries(Object.entries(sight).filter(([name]) => names.includes(name))));
    document.body.append(widget);
    await widget.updateComplete;
    for (const name of names) {
      const before = properties[name];
      for (const kind of kinds) {
        properties[name] = kind;
        await widget.updateComplete;
        expect(() => widget.result, `${name} = ${String(kind)}`).not.to.throw();
      }
      properties[name] = before;
      await widget.updateComplete;
    }
    widget.remove();
  });
}

it('locks the fields of a list, as those of a text', async () => {
  const widget = document.createElement('lubber-amplitude') as LubberAmplitude;
  document.body.append(widget);
  Object.assign(widget, { locked: ['latitude', 'bearing'] });
  await widget.updateComplete;
  expect(['latitude', 'bearing', 'longitude'].map((name) => input(widget, name).readOnly)).to.deep.equal([true, true, false]);
  widget.remove();
});
