import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';
import { languages } from '../support/package-entries.js';

const dist = join(projectFolder, 'dist');
const scripts = [...readdirSync(dist).filter((name) => name.endsWith('.js')), ...languages.map((name) => `languages/${name}.js`)].sort();
const sum = (algorithm: string, file: string): Buffer => createHash(algorithm).update(readFileSync(join(dist, file))).digest();

describe('the sums of the scripts', () => {
  it('are there for each', () => {
    assert.ok(scripts.includes('lubberline.js') && scripts.length > 5, scripts.join());
  });

  it('as an integrity attribute has them', () => {
    const told = JSON.parse(readFileSync(join(dist, 'integrity.json'), 'utf8')) as Readonly<Record<string, string>>;
    assert.deepEqual(told, Object.fromEntries(scripts.map((file) => [file, `sha384-${sum('sha384', file).toString('base64')}`])));
  });

  it('as sha256sum -c reads them', () => {
    assert.equal(readFileSync(join(dist, 'SHA256SUMS'), 'utf8'), scripts.map((file) => `${sum('sha256', file).toString('hex')}  ${file}\n`).join(''));
  });
});
