/** Makes dist/: modules with types, classic scripts, the manifest of the elements, licences and sums. */
import { renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildInto } from './build/build-into.js';
import { projectFolder } from './build/run.js';

/** Made beside the old one and put in its place when all is well: a failed build takes nothing away. */
const made = `node_modules/.lubberline-dist-${process.pid}`;

try {
  await buildInto(made);
  rmSync(join(projectFolder, 'dist'), { recursive: true, force: true });
  renameSync(join(projectFolder, made), join(projectFolder, 'dist'));
} catch (error) {
  rmSync(join(projectFolder, made), { recursive: true, force: true });
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
