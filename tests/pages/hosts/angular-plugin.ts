import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import linker from '@angular/compiler-cli/linker/babel';
import { transformSync } from '@babel/core';
import type { PluginOption } from 'vite';
import { projectFolder } from '../../install.js';

/**
 * Angular's own two steps: its compiler turns the app's templates into code before the bundler sees
 * them, and its linker does the same in the packages, which are published half compiled.
 */
export function angular(folder: string): PluginOption {
  return {
    name: 'angular',
    buildStart() {
      const { status, stdout, stderr } = spawnSync(join(projectFolder, 'node_modules', '.bin', 'ngc'), ['-p', folder], { encoding: 'utf8' });
      if (status !== 0) this.error(stdout + stderr);
    },
    transform(code, id) {
      if (!id.includes('@angular') || !code.includes('ɵɵngDeclare')) return null;
      return { code: transformSync(code, { filename: id, configFile: false, babelrc: false, compact: false, plugins: [linker] })?.code ?? code, map: null };
    },
  };
}
