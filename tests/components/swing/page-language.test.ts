/** A language that comes once the swing stands: rows and settings that are left alone while figures change must take it up. */
import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/swing/define.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { cautions, cell, column, flat, paste, press, root, settled, type } from './grid-hand.js';

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

  // Fields read the words of the page's language, cells refused them. Deviations of the Handbook of Magnetic Compass Adjustment, art. 501.
  it('reads its words for east and west, pasted behind figures or in a column of their own, and typed', async () => {
    const deviations = [10.5, 20, 11.5, -1.2, -5.5, -8, -12.5, -6.8];
    const table = (gap: string): string =>
      deviations.map((deviation, index) => `${index * 45}°\t${Math.abs(deviation).toString().replace('.', ',')}${gap}${deviation < 0 ? 'West' : 'Ost'}`).join('\n');
    for (const gap of ['° ', '\t']) {
      const element = await fixture<LubberSwing>(html`<lubber-swing lang="de" method="deviation" headings="8"></lubber-swing>`);
      await paste(element, 'heading-0', table(gap));
      expect(element.result?.rows.map((row) => (row.ok ? row.deviation : null)), JSON.stringify(gap)).to.deep.equal(deviations);
      cell(element, 'reading-0').focus();
      await type(element, '3,5 West');
      await press(element, 'Enter');
      expect(element.result?.rows[0]?.ok && element.result.rows[0].deviation).to.equal(-3.5);
      expect(column(element, 'reading')[0]).to.equal('3,5 West');
    }
  });
});
