/** A table of deviations out of a book, typed and used with the keyboard alone. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/conversion/define.js';
import type { LubberConversion } from '../../../components/conversion/conversion.js';
import { flat, root } from '../../support/in-widget.js';

const answer = (element: LubberConversion): string => flat(root(element).querySelector('.answer [aria-hidden]'));

/** What has the focus: an id, else the name and value of a choice. */
function here(element: LubberConversion): string {
  const focused = root(element).activeElement as HTMLInputElement | null;
  return focused?.id || `${focused?.name}=${focused?.value}`;
}

/** Goes to a part by Tab, or back by Shift and Tab. */
async function tabTo(element: LubberConversion, part: string, back = false): Promise<void> {
  if (back) await sendKeys({ down: 'Shift' });
  for (let step = 0; step < 40 && here(element) !== part && !here(element).startsWith(`${part}=`); step += 1) await sendKeys({ press: 'Tab' });
  if (back) await sendKeys({ up: 'Shift' });
  expect(here(element).split('=')[0]).to.equal(part);
}

async function choose(element: LubberConversion, name: string, value: string, back = false): Promise<void> {
  await tabTo(element, name, back);
  for (let step = 0; step < 5 && here(element) !== `${name}=${value}`; step += 1) await sendKeys({ press: 'ArrowDown' });
  expect(here(element)).to.equal(`${name}=${value}`);
}

/** Types in the place of what stands in the field. */
async function overwrite(element: LubberConversion, text: string): Promise<void> {
  (root(element).activeElement as HTMLInputElement).select();
  await sendKeys({ type: text });
  await element.updateComplete;
}

// Handbook of Magnetic Compass Adjustment, article 501, figure 501: deviations on the eight points,
// and the coefficients it finds from them.
const printed: readonly (readonly [line: string, heading: number, deviation: number])[] = [
  ['N 10.5E', 0, 10.5], ['NE 20.0E', 45, 20], ['E 11.5E', 90, 11.5], ['SE 1.2W', 135, -1.2],
  ['S 5.5W', 180, -5.5], ['SW 8.0W', 225, -8], ['W 12.5W', 270, -12.5], ['NW 6.8W', 315, -6.8],
];
const coefficients = { A: 1, B: 12, C: 8, D: 5, E: 1.5 };
const VARIATION = 53;

/** Three figures and a tenth, as a course is written. */
const course = (degrees: number): string => `${(((Math.round(degrees * 10) / 10) + 360) % 360).toFixed(1).padStart(5, '0')}°`;

describe('a table of deviations typed from a book', () => {
  let element: LubberConversion;

  before(async () => {
    // No fixture: that would be taken away after the first test.
    element = document.createElement('lubber-conversion');
    document.body.append(element);
    await element.updateComplete;
    await tabTo(element, 'variation');
    // Invented, and large: courses come to lie across north.
    await overwrite(element, `${VARIATION}E`);
    await choose(element, 'source', 'table');
    await tabTo(element, 'table');
    for (const [line] of printed) {
      await sendKeys({ type: line });
      await sendKeys({ press: 'Enter' });
    }
    await tabTo(element, 'heading', true);
  });

  after(() => element.remove());

  it('is understood line by line', () => {
    expect(flat(root(element).querySelector('#table-echo'))).to.equal('Headings understood: 8.');
  });

  it('turns compass courses into true ones: compass, and deviation and variation, easterly added', async () => {
    for (const [, heading, deviation] of printed) {
      await overwrite(element, String(heading).padStart(3, '0'));
      expect(answer(element), String(heading)).to.equal(`True course ${course(heading + deviation + VARIATION)}`);
    }
  });

  it('between the printed headings keeps to the curve of the printed coefficients within a quarter of a degree', async () => {
    for (const [, printedHeading] of printed) {
      const heading = printedHeading + 22.5;
      await overwrite(element, String(heading));
      const h = (heading * Math.PI) / 180;
      const { A, B, C, D, E } = coefficients;
      const curve = A + B * Math.sin(h) + C * Math.cos(h) + D * Math.sin(2 * h) + E * Math.cos(2 * h);
      expect(element.result?.deviation, String(heading)).to.be.closeTo(curve, 0.25);
    }
  });

  it('turns true courses into compass ones on the same headings', async () => {
    await choose(element, 'headingBy', 'true');
    await tabTo(element, 'heading', true);
    for (const [, heading, deviation] of printed) {
      await overwrite(element, course(heading + deviation + VARIATION).replace('°', ''));
      expect(answer(element), String(heading)).to.equal(`Compass course ${course(heading)}`);
      expect(flat(root(element).querySelector('.there-and-back'))).to.contain(`M ${course(heading + deviation)}`);
    }
  });

  it('turns magnetic courses into both', async () => {
    await choose(element, 'headingBy', 'magnetic');
    await tabTo(element, 'heading', true);
    for (const [, heading, deviation] of printed) {
      await overwrite(element, course(heading + deviation).replace('°', ''));
      expect(element.result?.values.compass, String(heading)).to.be.closeTo(heading, 1e-9);
      expect(element.result?.values.true, String(heading)).to.be.closeTo((heading + deviation + VARIATION) % 360, 1e-9);
    }
  });
});
