import assert from 'node:assert/strict';
import { test } from 'node:test';
import { orderImports } from '../../components/build/order-imports.js';

test('imports stand by kind: packages, styles, bases, what is small, views, the rest, sums, words; each kind as it stood', () => {
  const kinds = ["'lit'", "'./a-styles.js'", "'../shared/lubber-element.js'", "'./amplitude-fields.js'", "'./fields-view.js'", "'./moment-rule.js'", "'../../core/angle/wrap.js'", "'../../core/sky/body.js'", "'./amplitude-messages.js'"];
  const lines = kinds.map((from, index) => `import { a${index} } from ${from};`);
  const [sums, more] = lines.slice(6, 8);
  const others = lines.filter((line) => line !== sums && line !== more).reverse();
  assert.equal(orderImports(['/** What it is. */', sums, ...others, more, 'export const b = 1;'].join('\n')), [...lines, '/** What it is. */', 'export const b = 1;'].join('\n'));
});

test('a module that imports for what that does stays as it is', () => {
  const source = "import { register } from './a-messages.js';\nimport './define.js';\nimport { b } from '../../core/b.js';\n";
  assert.equal(orderImports(source), source);
});

// A line of a template that looked like an import was lifted out of its text.
test('what only looks like an import, in a text or a comment, stays where it stands', () => {
  const [first, second] = ["import { html } from 'lit';", "import { sum } from '../../core/sum.js';"];
  const rest = ['/*', "import { old } from './old.js';", '*/', '// A page that uses it:', 'export const example = `', "import { a } from '../../core/a.js';", 'import b', '`;', "import('./late.js');"];
  assert.equal(orderImports([second, first, ...rest].join('\n')), [first, second, ...rest].join('\n'));
});
