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

// A line of a template that looked like an import was lifted out of its text.
test('what only looks like an import, in a text or a comment, stays where it stands', () => {
  const [first, second] = ["import { sum } from '../../core/sum.js';", "import { html } from 'lit';"];
  const rest = ['/*', "import { old } from './old.js';", '*/', '// A page that uses it:', 'export const example = `', "import { a } from '../../core/a.js';", 'import b', '`;', "import('./late.js');"];
  assert.equal(orderImports([second, first, ...rest].join('\n')), [first, second, ...rest].join('\n'));
});
