import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';

const notices = readFileSync(join(projectFolder, 'dist/third-party-notices.txt'), 'utf8');

interface Locked {
  readonly dev?: boolean;
  readonly version?: string;
  readonly license?: string;
}

const { packages } = JSON.parse(readFileSync(join(projectFolder, 'package-lock.json'), 'utf8')) as { readonly packages: Readonly<Record<string, Locked>> };
const installed = Object.entries(packages).filter(([path, { dev }]) => path !== '' && !dev);

/** Installed for types or for servers alone: nothing of them is in a script. */
const unbundled = new Set(['@types/trusted-types', '@lit-labs/ssr-dom-shim', 'internmap']);

describe('the notices of what the scripts hold', () => {
  for (const [path, { version, license }] of installed) {
    const name = path.replace(/.*node_modules\//, '');
    it(unbundled.has(name) ? `do not name ${name}, which is in none` : `give the licence of ${name} in full`, () => {
      assert.equal(notices.includes(`${name} ${version} (${license})\n`), !unbundled.has(name));
      if (unbundled.has(name)) return;
      const file = readdirSync(join(projectFolder, path)).find((each) => /^licen[cs]e/i.test(each));
      const text = readFileSync(join(projectFolder, path, file ?? ''), 'utf8').trim();
      assert.ok(text.length > 200 && notices.includes(text));
    });
  }

  it('are all of licences that ask for no more than to be named', () => {
    for (const [path, { license }] of installed) assert.match(license ?? '', /^(MIT|ISC|BSD-3-Clause|0BSD)$/, path);
  });
});
