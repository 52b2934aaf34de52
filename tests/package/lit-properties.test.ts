import assert from 'node:assert/strict';
import { test } from 'node:test';
import { litProperties } from '../../components/build/lit-properties.js';

const compiled = (imports: string, decorations: string): string => `import { __decorate } from "tslib";
import { html } from 'lit';
import { ${imports} } from 'lit/decorators.js';
export class Widget extends LitElement {
    render() { return html(); }
}
${decorations}
export const after = 1;
`;

test('decorated properties of a class become its static properties, and the decorators are not loaded', () => {
  const source = compiled(
    'property, state as internal',
    `__decorate([
    property({ attribute: 'height-of-eye', reflect: true })
], Widget.prototype, "heightOfEye", void 0);
__decorate([
    property()
], Widget.prototype, "state", null);
__decorate([
    internal()
], Widget.prototype, "shown", void 0);`,
  );
  const made = litProperties(source);
  assert.match(made, /static properties = \{ heightOfEye: \{ attribute: 'height-of-eye', reflect: true \}, state: \{\}, shown: \{ state: true, attribute: false \} \};/);
  assert.doesNotMatch(made, /__decorate|tslib|decorators/);
  assert.match(made, /import \{ html \} from 'lit';/);
  assert.match(made, /render\(\) \{ return html\(\); \}/);
  assert.match(made, /export const after = 1;/);
});

test('a module without decorators stays', () => {
  const source = "import { html } from 'lit';\nexport class A {}\n";
  assert.equal(litProperties(source), source);
});

test('a decorator of another kind stops the build', () => {
  const source = compiled('property, query', "__decorate([\n    query('p')\n], Widget.prototype, \"p\", void 0);");
  assert.throws(() => litProperties(source), /only property\(\) and state\(\)/);
});
