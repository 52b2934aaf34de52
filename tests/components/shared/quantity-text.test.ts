import { expect } from '@open-wc/testing';
import { quantityText } from '../../../components/shared/quantity-text.js';

describe('a quantity as the trade writes it', () => {
  // An hour angle just short of the meridian read 360.00°: an almanac's run from 0 to 359 (common practice).
  it('begins hour angles and bearings anew at 360', () => {
    expect(quantityText({ value: 359.9985, unit: 'hourAngle' })).to.equal('0.00°');
    expect(quantityText({ value: 359.994, unit: 'hourAngle' })).to.equal('359.99°');
    expect(quantityText({ value: 359.97, unit: 'bearing' })).to.equal('000.0°');
  });
});
