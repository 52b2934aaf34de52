import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, describe, it } from 'node:test';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { projectFolder } from '../install.js';
import { budgets } from './size-budgets.js';
import type { Budget } from './size-budgets.js';

const kilobytes = (bytes: Uint8Array): number => gzipSync(bytes, { level: 9 }).length / 1000;

/** What a bundler makes of modules: first what is loaded at once, then what is loaded late. */
async function bundled(modules: readonly string[]): Promise<{ readonly at: Uint8Array; readonly late: Uint8Array[] }> {
  const { outputFiles, metafile } = await build({
    absWorkingDir: projectFolder,
    stdin: {
      contents: modules.length > 0 ? modules.map((module) => `import './${module}';`).join('\n') : "export * from 'lit'; export * from 'lit/decorators.js';",
      resolveDir: join(projectFolder, 'dist/components'),
    },
    bundle: true,
    minify: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['production'],
    legalComments: 'none',
    outdir: 'nowhere',
    write: false,
    metafile: true,
  });
  const first = Object.values(metafile.outputs).findIndex(({ entryPoint }) => entryPoint !== undefined && !/node_modules/.test(entryPoint));
  const contents = outputFiles.map((file) => file.contents);
  return { at: contents[first] ?? new Uint8Array(), late: contents.filter((_, index) => index !== first) };
}

async function weigh({ modules = [], script, late }: Budget): Promise<number> {
  if (script) return kilobytes(readFileSync(join(projectFolder, 'dist', script)));
  const made = await bundled(modules);
  if (late) assert.equal(made.late.length > 0, true, 'nothing is loaded late');
  return late ? made.late.reduce((sum, chunk) => sum + kilobytes(chunk), 0) : kilobytes(made.at);
}

describe('what the package weighs', () => {
  const table: string[] = [];

  for (const budget of budgets) {
    const { what, allowed, wanted } = budget;
    it(`${what}: ${allowed} kB at most${wanted === undefined ? '' : `, ${wanted} wanted`}`, async () => {
      const found = await weigh(budget);
      table.push(`${found.toFixed(1).padStart(7)} of ${String(allowed).padStart(5)} kB${wanted === undefined ? '' : `, ${wanted} wanted`}  ${what}`);
      assert.ok(found <= allowed, `${found.toFixed(2)} kB`);
    });
  }

  it('is what README says, to two in a hundred', () => {
    const said = [...readFileSync(join(projectFolder, 'README.md'), 'utf8').matchAll(/^\| `(lubberline[\w-]*\.js)` \|.*\| (\d+) kB \|$/gm)];
    assert.equal(said.length, 4);
    for (const [, script = '', figure] of said) {
      const found = kilobytes(readFileSync(join(projectFolder, 'dist', script)));
      assert.ok(Math.abs(found / Number(figure) - 1) < 0.02, `${script}: ${found.toFixed(1)} kB`);
    }
  });

  after(() => console.log(table.join('\n')));
});
