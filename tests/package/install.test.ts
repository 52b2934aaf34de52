import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { packagesAreInstalled, projectFolder } from '../install.js';

describe('whether the packages are installed', () => {
  let folder: string;
  const write = (name: string, packages: object): void => writeFileSync(join(folder, name), JSON.stringify({ packages }));

  before(() => {
    folder = mkdtempSync(join(tmpdir(), 'lubberline-'));
    mkdirSync(join(folder, 'node_modules', 'lit'), { recursive: true });
    write('package-lock.json', { '': { version: '1.0.0' }, 'node_modules/lit': { version: '3.3.3' }, 'node_modules/other': { version: '1.0.0', optional: true } });
  });

  after(() => rmSync(folder, { recursive: true }));

  it('a folder nobody installed into is not', () => assert.equal(packagesAreInstalled(folder), false));

  it('whoever installed the versions of the lock file, they are, even without those of another platform', () => {
    write('node_modules/.package-lock.json', { 'node_modules/lit': { version: '3.3.3' } });
    assert.equal(packagesAreInstalled(folder), true);
  });

  it('another version is not', () => {
    write('node_modules/.package-lock.json', { 'node_modules/lit': { version: '3.3.2' } });
    assert.equal(packagesAreInstalled(folder), false);
  });

  it('a package that was listed and then deleted is not', () => {
    write('node_modules/.package-lock.json', { 'node_modules/lit': { version: '3.3.3' } });
    rmSync(join(folder, 'node_modules', 'lit'), { recursive: true });
    assert.equal(packagesAreInstalled(folder), false);
  });
});

it('a plain npm ci runs no script of a package: one of them would fetch a browser, and fail without a network', () => {
  const ofThisProject = Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith('npm_')));
  const asked = execFileSync('npm', ['config', 'get', 'ignore-scripts'], { cwd: projectFolder, encoding: 'utf8', env: ofThisProject });
  assert.equal(asked.trim(), 'true');
});
