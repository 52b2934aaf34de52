import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { bodyNamed, bodyNames, checkBody, kindOf } from '../../../core/sky/body.js';
import { almanacNumber, starNames } from '../../../core/sky/star-catalogue.js';

test('there are 64 bodies: Sun, Moon, four planets, 57 stars and Polaris', () => {
  assert.equal(bodyNames.length, 64);
  assert.equal(new Set(bodyNames).size, 64);
  assert.deepEqual(
    ['Sun', 'Moon', 'planet', 'star'].map((kind) => bodyNames.filter((name) => kindOf(name) === kind).length),
    [1, 1, 4, 58],
  );
});

// Numbers of the Nautical Almanac's list of stars, from memory.
for (const [star, number] of [['Alpheratz', 1], ['Aldebaran', 10], ['Sirius', 18], ['Rigil Kentaurus', 38], ['Vega', 49], ["Al Na'ir", 55], ['Markab', 57]] as const) {
  test(`${star} is number ${number} of the almanac`, () => assert.equal(almanacNumber(star), number));
}

test('what is no star of the almanac has no number there', () => {
  for (const name of ['Sun', 'sirius', 'Mercury', 'toString']) assert.throws(() => almanacNumber(name as 'Sirius'), { name: 'RangeError', message: /^star: / }, name);
});

test('the kind of a body is told in any spelling, and of no other text', () => {
  assert.deepEqual(['SUN', 'moon', 'VENUS', 'Rigil Kent.'].map((name) => kindOf(name as 'Sun')), ['Sun', 'Moon', 'planet', 'star']);
  assert.throws(() => kindOf('Pluto' as 'Sun'), { name: 'RangeError', message: /^body: Pluto/ });
});

test('Polaris has no almanac number', () => {
  assert.equal(almanacNumber('Polaris'), null);
  assert.equal(starNames.at(-1), 'Polaris');
});

for (const [text, body] of [
  ['SUN', 'Sun'],
  ['al nair', "Al Na'ir"],
  ['Al Na’ir', "Al Na'ir"],
  [' kaus  australis ', 'Kaus Australis'],
  ['Rigil Kent.', 'Rigil Kentaurus'],
  ["Zuben'ubi", 'Zubenelgenubi'],
  ['Mercury', null],
  ['', null],
] as const) {
  test(`"${text}" names ${body ?? 'no body'}`, () => assert.equal(bodyNamed(text), body));
}

test('every name in any capitals and without spaces is read back as itself', () => {
  for (const name of bodyNames) {
    assert.equal(bodyNamed(name.toUpperCase()), name);
    assert.equal(bodyNamed(name.toLowerCase().replace(/[ ']/g, '')), name);
  }
});

test('no text whatever throws', () => {
  fc.assert(fc.property(fc.string(), (text) => bodyNamed(text) === null || bodyNames.includes(bodyNamed(text) ?? 'Sun')));
});

test('what names no body is refused by name', () => {
  assert.throws(() => checkBody('Pluto'), { name: 'RangeError', message: /^body: Pluto/ });
});
