import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/azimuth/define.js';
import type { BearingSeries } from '../../../core/sight/bearing-series.js';
import type { LubberAzimuth } from '../../../components/azimuth/azimuth.js';
import { cornersOf, errorIn, errorsUp, outsideOf, readOff, size } from '../../support/dividers.js';
import { must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

/** Bearings a minute apart as a compass with an error of some 4 E would give them, the fourth read ten degrees wrong; invented. */
const series = ['08:20:00 089.0', '08:21:00 088.4', '08:22:00 088.9', '08:23:00 098.6', '08:24:00 088.2', '08:26:00 088.5'].join('\n');

/** Chart and list tell the same: each bearing's error over its time. */
describe('the picture of a series of bearings', () => {
  it('shows each error at its time and height, the mean as a line, a struck one as a cross', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T12:20:00Z" body="Sun" .series=${series.replaceAll('08:', '12:')}></lubber-azimuth>`);
    await element.updateComplete;
    await until(() => root(element).querySelectorAll('svg.ribbon circle').length > 1 && root(element).querySelector('svg.ribbon path[stroke="var(--soft)"]') !== null);
    const picture = must([...root(element).querySelectorAll('svg.ribbon')].find((each) => each.querySelector('path[stroke="var(--soft)"]')));
    const found = element.result as BearingSeries;
    expect(outsideOf(picture)).to.deep.equal([]);
    const mean = must([...picture.querySelectorAll('line')].find((line) => line.getAttribute('stroke') === 'var(--accent)'));
    const figure = must([...picture.querySelectorAll('text:not(.soft)')].find((text) => Math.abs(size(text, 'y') - size(mean, 'y1') - 4) < 0.1));
    // Beside the mean's figure there is room for one other.
    const up = [[errorIn(figure.textContent), size(mean, 'y1')], errorsUp(picture)[0]] as const;
    const across = [...picture.querySelectorAll('text.soft')].filter(({ textContent }) => textContent.includes(':'));
    expect(across.map(({ textContent }) => textContent.trim())).to.deep.equal(['12:20:00', '12:26:00']);
    const minutes = [[0, size(must(across[0]), 'x')], [6, size(must(across[1]), 'x')]] as const;
    const kept = [...picture.querySelectorAll('circle')].map((dot) => [size(dot, 'cx'), size(dot, 'cy')] as const);
    const struck = [...picture.querySelectorAll('path[stroke="var(--soft)"]')].map((cross) => must(cornersOf(cross)[0])).map(([x, y]) => [x + 4, y + 4] as const);
    expect([kept.length, struck.length]).to.deep.equal([5, 1]);
    const errors = new Map(found.shots.map(({ instant, error }) => [(instant.getTime() - Date.UTC(2026, 10, 26, 12, 20)) / 60_000, error]));
    for (const [x, y] of [...kept, ...struck]) {
      const minute = readOff(minutes, x);
      expect(minute).to.be.closeTo(Math.round(minute), 1e-6);
      expect(readOff(up, y)).to.be.closeTo(errors.get(Math.round(minute)) ?? NaN, 0.12);
    }
    expect(struck.map(([x]) => Math.round(readOff(minutes, x)))).to.deep.equal([3]);
    expect(errorIn(figure.textContent)).to.be.closeTo(found.error, 0.051);
    expect(size(mean, 'y1')).to.equal(size(mean, 'y2'));
  });
});
