import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';

/** What Node says when it imports an entry of the package by its public name. */
function importInNode(code: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: projectFolder, encoding: 'utf8' }).trim();
}

const { exports: asked } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as {
  readonly exports: Readonly<Record<string, string | Readonly<Record<'types' | 'default', string>>>>;
};

const folders = (of: string): string[] => readdirSync(join(projectFolder, 'components', of), { withFileTypes: true }).flatMap((each) => (each.isDirectory() ? [each.name] : []));
const components = folders('.').filter((name) => existsSync(join(projectFolder, 'components', name, 'define.ts')));
const languages = folders('languages');

/** Every name that may stand in for the star of an entry. */
const stars: Readonly<Record<string, readonly string[]>> = { './components/': components, './languages/': languages, './lms/': ['scorm', 'cmi5', 'course-page'] };

const starsOf = (entry: string): readonly string[] => Object.entries(stars).find(([start]) => entry.startsWith(start))?.[1] ?? [];

/** Every entry by its public name, with the files it leads to. */
const entries = Object.entries(asked).flatMap(([entry, to]) => {
  const files = typeof to === 'string' ? [to] : [to.types, to.default];
  const names = entry.includes('*') ? starsOf(entry) : [''];
  return names.map((name) => ({ entry: entry.replace('*', name).replace('.', 'lubberline'), files: files.map((file) => file.replaceAll('*', name)) }));
});

describe('the package in Node, where there is no page', () => {
  it('core computes', () => {
    const said = importInNode(
      "import { altitudeAzimuth } from 'lubberline/core'; console.log(altitudeAzimuth({ latitude: 0, declination: 0, localHourAngle: 270 }).azimuth)",
    );
    assert.equal(said, '90');
  });

  it('has the thirteen widgets, and a language at least', () => {
    assert.equal(components.length, 13);
    assert.ok(languages.length > 0);
  });

  it('has every file an entry leads to', () => {
    assert.deepEqual(entries.flatMap(({ files }) => files).filter((file) => !existsSync(join(projectFolder, file))), []);
  });

  it('imports every entry by its public name', () => {
    const modules = entries.filter(({ entry }) => !entry.endsWith('.json')).map(({ entry }) => entry);
    assert.ok(modules.length > 30, modules.join());
    assert.equal(importInNode(`for (const entry of ${JSON.stringify(modules)}) await import(entry); console.log('imported')`), 'imported');
  });

  it('hands out its data', () => {
    for (const { entry } of entries.filter(({ entry: name }) => name.endsWith('.json'))) {
      assert.equal(importInNode(`import { createRequire } from 'node:module'; console.log(typeof createRequire(import.meta.url)('${entry}'))`), 'object');
    }
  });
});
