import assert from 'node:assert/strict';
import { test } from 'node:test';
import { orderImports } from '../../components/build/order-imports.js';

test('imports stand by kind: sums, packages, styles, bases, views, the rest, words; each kind as it stood', () => {
  const kinds = ["'../../core/angle/wrap.js'", "'../../core/sky/body.js'", "'lit'", "'./a-styles.js'", "'../shared/lubber-element.js'", "'./fields-view.js'", "'./moment-rule.js'", "'./amplitude-messages.js'"];
  const [sums, more, ...others] = kinds.map((from, index) => `import { a${index} } from ${from};`);
  assert.equal(orderImports(['/** What it is. */', ...others.reverse(), sums, more, 'export const b = 1;'].join('\n')), [sums, more, ...others.reverse(), '/** What it is. */', 'export const b = 1;'].join('\n'));
});

test('a module that imports for what that does stays as it is', () => {
  const source = "import { register } from './a-messages.js';\nimport './define.js';\nimport { b } from '../../core/b.js';\n";
  assert.equal(orderImports(source), source);
});
