import { expect } from '@open-wc/testing';
import { digest, digestOf } from '../../core/drill/digest.js';

describe('a seed in a browser', () => {
  it(`draws what Node draws, in ${/Firefox|Chrome/.exec(navigator.userAgent)?.[0] ?? 'this browser'}`, () => {
    expect(digestOf(20)).to.deep.equal(digest);
  });
});
