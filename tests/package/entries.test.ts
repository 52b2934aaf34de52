import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';
import { entries, languages, widgets } from '../support/package-entries.js';

/** What Node says when it imports an entry of the package by its public name. */
function importInNode(code: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: projectFolder, encoding: 'utf8' }).trim();
}

describe('the package in Node, where there is no page', () => {
  it('core computes', () => {
    const said = importInNode(
      "import { altitudeAzimuth } from 'lubberline/core'; console.log(altitudeAzimuth({ latitude: 0, declination: 0, localHourAngle: 270 }).azimuth)",
    );
    assert.equal(said, '90');
  });

  it('has the widgets that README lists, each registered and exported with the rest, and a language at least', () => {
    const inText = (file: string, pattern: RegExp): string[] => [...readFileSync(join(projectFolder, file), 'utf8').matchAll(pattern)].map(([, name = '']) => name).sort();
    const listed = inText('README.md', /(?<=^\| [^|\n]*)`lubber-([\w-]+)`/gm);
    assert.ok(listed.includes('amplitude'));
    assert.deepEqual([...widgets].sort(), listed, 'folders with a define.ts, and rows of README');
    assert.deepEqual(inText('components/define.ts', /'\.\/([\w-]+)\/define\.js'/g), listed, 'components/define.ts');
    assert.deepEqual(inText('components/index.ts', /export \{ Lubber\w+ \} from '\.\/([\w-]+)\/\1\.js'/g), listed, 'components/index.ts');
    assert.ok(languages.length > 0);
  });

  it('bears the release of the package', () => {
    const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as { readonly version: string };
    assert.equal(importInNode("import { LubberAmplitude } from 'lubberline'; console.log(LubberAmplitude.lubberlineRelease)"), version);
  });

  it('has every file an entry leads to', () => {
    assert.deepEqual(entries.flatMap(({ files }) => files).filter((file) => !existsSync(join(projectFolder, file))), []);
  });

  it('imports every entry by its public name', () => {
    const modules = entries.map(({ name }) => name).filter((name) => !name.endsWith('.json'));
    assert.ok(modules.length > 30, modules.join());
    assert.equal(importInNode(`for (const entry of ${JSON.stringify(modules)}) await import(entry); console.log('imported')`), 'imported');
  });

  it('hands out its data', () => {
    const data = entries.filter(({ name }) => name.endsWith('.json'));
    assert.equal(data.length, 2);
    for (const { name } of data) {
      assert.equal(importInNode(`import { createRequire } from 'node:module'; console.log(typeof createRequire(import.meta.url)('${name}'))`), 'object');
    }
  });
});
