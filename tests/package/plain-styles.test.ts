import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { plainStyles } from '../../components/build/plain-styles.js';
import { projectFolder } from '../install.js';

const cases: readonly (readonly [what: string, from: string, to: string])[] = [
  ['a style is a text', "import { css } from 'lit';\nexport const a = css`b{c:d}`;", "import { unsafeCSS } from 'lit';\nexport const a = unsafeCSS(`b{c:d}`);"],
  ['with others in its places, and several to a module', "import { css, html, unsafeCSS } from 'lit';\nconst a = css`b{${c}}${unsafeCSS('d')}`, e = css `${a}`;", "import { html, unsafeCSS } from 'lit';\nconst a = unsafeCSS(`b{${c}}${unsafeCSS('d')}`), e = unsafeCSS(`${a}`);"],
  ['what is called so and is not of Lit stays', "import { css } from './other.js';\nconst a = css`b`;", "import { css } from './other.js';\nconst a = css`b`;"],
  ['a module without styles stays', "import { html } from 'lit';\nconst a = html`b`;", "import { html } from 'lit';\nconst a = html`b`;"],
];

for (const [what, from, to] of cases) test(what, () => assert.equal(plainStyles(from), to));

test('no module of the package asks for the tag', () => {
  const folder = join(projectFolder, 'dist/components');
  const styles = (readdirSync(folder, { recursive: true }) as string[]).filter((name) => name.endsWith('-styles.js'));
  assert.ok(styles.length > 20);
  for (const name of styles) {
    const source = readFileSync(join(folder, name), 'utf8');
    assert.match(source, /unsafeCSS\(`/, name);
    assert.doesNotMatch(source, /\bcss\b *[`,}]/, name);
  }
});
