import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { normalise } from '../../../core/text/normalise.js';
import { anyText } from './any-text.js';

// What each character is comes from the names in the Unicode character database.
const cases: readonly (readonly [what: string, text: string, plain: string])[] = [
  ['a masculine ordinal for the degree', '33º', '33°'],
  ['a ring above for the degree', '33˚', '33°'],
  ['a superscript zero for the degree', '33⁰', '33°'],
  ['prime and double prime', '033°24′00″', '033°24\'00"'],
  ['curly quotes', '33°24’00”', '33°24\'00"'],
  ['two primes for seconds', '24′00′′', '24\'00"'],
  ['two apostrophes for seconds', "24'00''", '24\'00"'],
  ["seconds twice, the second's too", "24''00''", '24"00"'],
  ['an acute accent for the minute', '24´', "24'"],
  ['a true minus', '−33.4', '-33.4'],
  ['an en dash', '33–24', '33-24'],
  ['full-width figures and letters', '３３－２４．０ｎ', '33-24.0N'],
  ['a full-width apostrophe twice', '24＇00＇＇', '24\'00"'],
  ['Arabic-Indic figures', '٣٣٫٤', '33,4'],
  ['two Arabic decimal marks', '٣٫٤٫٥', '3,4,5'],
  ['Persian figures', '۳۳', '33'],
  ['a raised decimal point', '12′·4', "12'.4"],
  ['two raised points', '3·4·5', '3.4.5'],
  ['no-break, thin and ideographic spaces', '33\u00a024\u2009\u3000N', '33 24 N'],
  ['direction marks', '\u200e33.4\u202c', '33.4'],
  ['a joiner between two apostrophes', "24'00'\u200d'", '24\'00"'],
  ['line ends and tabs', ' 33\t24\r\nN ', '33 24 N'],
  ['small letters', 'n 45 e', 'N 45 E'],
];

for (const [what, text, plain] of cases) {
  test(`${what}: ${JSON.stringify(text)} becomes ${JSON.stringify(plain)}`, () => {
    assert.equal(normalise(text), plain);
  });
}

test('a superior or circled figure does not become a plain one, which would make 3² into 32', () => {
  assert.doesNotMatch(normalise('3²'), /32/);
  assert.doesNotMatch(normalise('3⁵'), /35/);
  assert.doesNotMatch(normalise('①'), /1/);
  assert.doesNotMatch(normalise('½'), /1/);
});

test('text made plain stays as it is when made plain again', () => {
  fc.assert(fc.property(anyText, (text) => {
    const once = normalise(text);
    assert.equal(normalise(once), once);
  }), { numRuns: 2000 });
});
