import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { projectFolder } from '../install.js';
import { entries } from '../support/package-entries.js';

const bin = (name: string): string => join(projectFolder, 'node_modules', '.bin', name);

describe('what npm would publish', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lubberline-pack-'));
  let packed: { readonly filename: string; readonly files: readonly { readonly path: string }[] };

  before(() => {
    const said = execFileSync('npm', ['pack', '--json', '--ignore-scripts', '--offline', '--pack-destination', folder], { cwd: projectFolder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    [packed] = JSON.parse(said) as [typeof packed];
  });
  after(() => rmSync(folder, { recursive: true }));

  it('holds dist and what npm adds by itself, and no map, source or tool', () => {
    const paths = packed.files.map(({ path }) => path);
    assert.deepEqual(paths.filter((path) => !path.startsWith('dist/')).sort(), ['LICENSE', 'README.md', 'package.json']);
    const odd = paths.filter((path) => path.startsWith('dist/') && !/\.(js|d\.ts|json|txt)$|^dist\/SHA256SUMS$/.test(path));
    assert.deepEqual(odd, []);
    for (const path of ['dist/lubberline.js', 'dist/custom-elements.json', 'dist/third-party-notices.txt', 'dist/integrity.json', 'dist/SHA256SUMS']) assert.ok(paths.includes(path), path);
  });

  it('holds every file an entry leads to', () => {
    const paths = new Set(packed.files.map(({ path }) => `./${path}`));
    assert.deepEqual(entries.flatMap(({ files }) => files).filter((file) => !paths.has(file)), []);
  });

  it('pleases publint, strictly', () => {
    const { status, stdout } = spawnSync(bin('publint'), ['run', join(folder, packed.filename), '--strict'], { cwd: projectFolder, encoding: 'utf8' });
    assert.equal(status, 0, stdout);
  });

  it('gives types to every entry, for bundlers and for Node, as ES modules', () => {
    const asked = entries.map(({ path }) => path);
    const { status, stdout } = spawnSync(bin('attw'), [join(folder, packed.filename), '--profile', 'esm-only', '--no-color', '--no-emoji', '--format', 'ascii', '--entrypoints', ...asked], { cwd: projectFolder, encoding: 'utf8' });
    assert.equal(status, 0, stdout.slice(-4000));
    assert.ok(stdout.includes('lubberline/components/amplitude.js'), stdout);
  });
});
