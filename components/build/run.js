import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));

const require = createRequire(import.meta.url);

/** Runs a script of a package in the project's folder; throws where it fails. */
export function run(script, args, { environment = {}, quiet = false } = {}) {
  const { status } = spawnSync(process.execPath, [require.resolve(script), ...args], {
    cwd: projectFolder,
    stdio: ['ignore', quiet ? 'ignore' : 'inherit', 'inherit'],
    env: { ...process.env, ...environment },
  });
  if (status !== 0) throw new Error(`${script} failed`);
}
