import assert from 'node:assert/strict';
import { test } from 'node:test';
import { staticFields } from '../../components/build/static-fields.js';

test('a static block that fills one field becomes the field', () => {
  assert.equal(staticFields('class A { static { this.styles = css`a{b:c}`; } }'), 'class A { static styles = css`a{b:c}`; }');
  assert.equal(staticFields('class A { static { this.a = 1; } #b; static { this.c = [this.a]; } }'), 'class A { static a = 1; #b; static c = [this.a]; }');
});

test('any other static block stays', () => {
  for (const source of ['class A { static { start(); } }', 'class A { static { this.a = 1; this.b = 2; } }', 'class A { static { other.a = 1; } }']) {
    assert.equal(staticFields(source), source);
  }
});
