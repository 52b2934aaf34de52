/** A language that comes once the swing stands: rows and settings that are left alone while figures change must take it up. */
import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/swing/define.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { cautions, cell, flat, root, settled } from './grid-hand.js';

describe('a swing in another language', () => {
  it('takes it up in every row and setting, and lists headings with its decimal mark', async () => {
    const rows = [0, 45, 67.5, 90, 112.5, 135, 157.5, 180, 202.5, 225, 247.5, 270, 292.5, 315].map((heading) => `${heading}\t1E`).join('\n');
    const element = await fixture<LubberSwing>(html`<lubber-swing lang="de" headings="16" .rows=${rows}></lubber-swing>`);
    // In English until the catalogue is there: no reading on 022.5 and 337.5.
    expect(cautions(element)).to.match(/No reading near 022\.5°, 337\.5°\./);
    await import('../../../components/languages/de/define.js');
    await settled(element);
    expect(cautions(element)).to.match(/Keine Ablesung nahe 022,5°, 337,5°\./);
    expect(cell(element, 'reading-3').getAttribute('aria-label')).to.match(/^Zeile 4/);
    expect(flat(root(element).querySelector('.settings label'))).not.to.equal('Method');
    expect(flat(root(element).querySelector('#correctors-standard caption'))).not.to.match(/magnets/);
  });
});
