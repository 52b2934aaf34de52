import { join } from 'node:path';
import { writeIntegrity } from './integrity.js';
import { buildModules } from './modules.js';
import { writeNotices } from './notices.js';
import { packTables } from './pack-tables.js';
import { projectFolder, run } from './run.js';
import { buildScripts } from './scripts.js';

/** Makes the whole of dist/ in a folder of the project, given by its path from there. */
export async function buildInto(folder) {
  const out = join(projectFolder, folder);
  buildModules(out);
  await packTables(out);
  writeNotices(out, await buildScripts(out));
  run('@custom-elements-manifest/analyzer/cem.js', ['analyze', '--config', 'components/build/manifest.config.js', '--quiet'], { environment: { LUBBERLINE_OUT: folder }, quiet: true });
  writeIntegrity(out);
}
