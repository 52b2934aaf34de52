/** Makes dist/: modules with types by the compiler, classic scripts by esbuild. */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = fileURLToPath(new URL('..', import.meta.url));

function compileModules() {
  const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
  const { status } = spawnSync(process.execPath, [compiler, '-p', 'components/tsconfig.json'], {
    cwd: folder,
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}

/** One classic script that registers everything: opens from a folder, needs no loader. */
async function bundleScript(entry, outfile) {
  await build({
    absWorkingDir: folder,
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    format: 'iife',
    // Chromium 91 to 93 claim static blocks that they refuse; the floor of the syntax is 90.
    target: ['chrome90', 'firefox102'],
    conditions: ['production'],
    legalComments: 'linked',
    sourcemap: true,
    logLevel: 'warning',
  });
}

rmSync(new URL('../dist', import.meta.url), { recursive: true, force: true });
compileModules();
await bundleScript('components/define.ts', 'dist/lubberline.js');
await bundleScript('components/lms/course-page.ts', 'dist/lubberline-course.js');
