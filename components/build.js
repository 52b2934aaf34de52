/** Makes dist/: modules with types by the compiler, classic scripts by esbuild. */
import { spawnSync } from 'node:child_process';
import { renameSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = fileURLToPath(new URL('..', import.meta.url));

/** Made beside the old one and put in its place when all is well: a failed build takes nothing away. */
const made = `node_modules/.lubberline-dist-${process.pid}`;

function compileModules() {
  const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
  const { status } = spawnSync(process.execPath, [compiler, '-p', 'components/tsconfig.json', '--outDir', made], {
    cwd: folder,
    stdio: 'inherit',
  });
  if (status !== 0) {
    rmSync(`${folder}${made}`, { recursive: true, force: true });
    process.exit(status ?? 1);
  }
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

compileModules();
await bundleScript('components/define.ts', `${made}/lubberline.js`);
await bundleScript('components/lms/course-page.ts', `${made}/lubberline-course.js`);
rmSync(`${folder}dist`, { recursive: true, force: true });
renameSync(`${folder}${made}`, `${folder}dist`);
