import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';
import { entries } from '../support/package-entries.js';

const { packages } = JSON.parse(readFileSync(join(projectFolder, 'package-lock.json'), 'utf8')) as { readonly packages: Readonly<Record<string, { readonly dev?: boolean }>> };

/** What npm installs with the package, and nothing else. */
const installed = Object.keys(packages).filter((path) => path !== '' && !packages[path]?.dev);

describe('a project that has installed the package alone', () => {
  for (const [how, module] of [['nodenext', 'nodenext'], ['bundler', 'esnext']] as const) {
    it(`compiles with every entry, strictly, libraries checked too, resolving as ${how}`, () => {
      const folder = mkdtempSync(join(tmpdir(), 'lubberline-consumer-'));
      const link = (from: string, to: string): void => {
        mkdirSync(dirname(join(folder, to)), { recursive: true });
        symlinkSync(join(projectFolder, from), join(folder, to));
      };
      for (const own of ['dist', 'package.json']) link(own, `node_modules/lubberline/${own}`);
      for (const path of installed) link(path, path);
      writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
      // The types for a framework ask for the framework's.
      const asked = entries.filter(({ path }) => path.split('/').length > 2 || ['./core', './define.js'].includes(path)).filter(({ path }) => !path.endsWith('.json'));
      const imports = ['lubberline', ...asked.map(({ name }) => name)].map((name, index) => `import * as entry${index} from '${name}'; export { entry${index} };`);
      writeFileSync(join(folder, 'all.ts'), `${imports.join('\n')}\nexport const swing = document.createElement('lubber-swing').result;\n`);
      const compiler = join(projectFolder, 'node_modules/typescript/bin/tsc');
      const options = ['--noEmit', '--strict', '--skipLibCheck', 'false', '--preserveSymlinks', '--target', 'es2022', '--lib', 'es2022,dom,dom.iterable', '--module', module, '--moduleResolution', how];
      const { status, stdout } = spawnSync(process.execPath, [compiler, ...options, 'all.ts'], { cwd: folder, encoding: 'utf8' });
      rmSync(folder, { recursive: true });
      assert.equal(status, 0, stdout);
    });
  }
});
