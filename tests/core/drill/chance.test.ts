import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { chanceFrom, hash, xorshift } from '../../../core/drill/chance.js';

describe('the chance of a seed', () => {
  // Test vectors published with FNV-1a, 32 bits; from memory.
  const vectors: readonly (readonly [string, number])[] = [['', 0x811c9dc5], ['a', 0xe40c292c], ['foobar', 0xbf9cf968]];
  for (const [text, expected] of vectors) {
    it(`hashes "${text}" to ${expected.toString(16)}`, () => assert.equal(hash(text), expected));
  }

  // The start and the first numbers of Marsaglia's article; from memory.
  it('goes on from 2463534242 as the article does', () => {
    const first = xorshift(2463534242);
    assert.deepEqual([first, xorshift(first)], [723471715, 2497366906]);
  });

  it('draws alike for one seed and unlike for another', () => {
    const draws = (seed: string): number[] => {
      const chance = chanceFrom(seed);
      return Array.from({ length: 20 }, () => chance.below(1000));
    };
    assert.deepEqual(draws('4711'), draws('4711'));
    assert.notDeepEqual(draws('4711'), draws('4712'));
  });

  it('draws every face of a die about as often', () => {
    const chance = chanceFrom('die');
    const counts = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 60_000; i++) {
      const face = chance.below(6);
      counts[face] = (counts[face] ?? 0) + 1;
    }
    // Six standard deviations of a fair die.
    for (const count of counts) assert.ok(Math.abs(count - 10_000) < 6 * Math.sqrt(60_000 * (1 / 6) * (5 / 6)), String(counts));
  });

  it('keeps to its range and its grid, both ends included', () => {
    const chance = chanceFrom('grid');
    const drawn = new Set(Array.from({ length: 500 }, () => chance.between(-1, 1, 2)));
    assert.deepEqual([...drawn].sort((a, b) => a - b), [-1, -0.5, 0, 0.5, 1]);
    for (let i = 0; i < 200; i++) assert.ok(!Object.is(chance.either(0, 1), -0));
  });

  it('refuses to draw from nothing', () => assert.throws(() => chanceFrom('x').below(0), /count/));
});
