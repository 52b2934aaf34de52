/** `npm start`: installs what is missing, builds, serves the demo and prints its address. */
import { spawnSync } from 'node:child_process';
import { ensurePackages, projectFolder } from '../tests/install.js';
import { serve } from './serve.js';

const port = Number(process.env.PORT || 8080);
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  console.error(`PORT is ${process.env.PORT}, which is no number from 0 to 65535.`);
  process.exit(2);
}
ensurePackages();
for (const script of ['components/build.js', 'demo/reference/build.js']) {
  const built = spawnSync(process.execPath, [script], { cwd: projectFolder, stdio: 'inherit' });
  if (built.status !== 0) process.exit(built.status ?? 1);
}
const { address } = await serve({ port });
console.log(`The chart room is at ${address}demo/chart-room/`);
