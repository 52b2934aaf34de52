/** The ES modules and their types: by the compiler, templates made short. */
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { litProperties } from './lit-properties.js';
import { minifyTemplates } from './minify-templates.js';
import { orderImports } from './order-imports.js';
import { packCatalogues } from './pack-catalogues.js';
import { plainStyles } from './plain-styles.js';
import { run } from './run.js';
import { staticFields } from './static-fields.js';

export function buildModules(out) {
  run('typescript/bin/tsc', ['-p', 'components/tsconfig.json', '--outDir', out]);
  const folder = join(out, 'components');
  for (const name of readdirSync(folder, { recursive: true })) {
    if (!name.endsWith('.js')) continue;
    const file = join(folder, name);
    const short = plainStyles(minifyTemplates(litProperties(staticFields(readFileSync(file, 'utf8')))));
    writeFileSync(file, orderImports(packCatalogues(short, name.replaceAll('\\', '/'))));
  }
}
