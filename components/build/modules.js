/** The ES modules and their types: by the compiler, templates made short. */
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inlineNumbers } from './inline-numbers.js';
import { litProperties } from './lit-properties.js';
import { minifyTemplates } from './minify-templates.js';
import { orderImports } from './order-imports.js';
import { packCatalogues } from './pack-catalogues.js';
import { plainStyles } from './plain-styles.js';
import { run } from './run.js';
import { staticFields } from './static-fields.js';

/** The modules in a folder, by their paths there. */
function modulesIn(folder) {
  const names = readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.js'));
  return new Map(names.map((name) => [name.replaceAll('\\', '/'), readFileSync(join(folder, name), 'utf8')]));
}

/** A module of a widget, by its path within the folder of components. */
const shortened = (source, path) => orderImports(packCatalogues(plainStyles(minifyTemplates(litProperties(staticFields(source)))), path));

export function buildModules(out) {
  run('typescript/bin/tsc', ['-p', 'components/tsconfig.json', '--outDir', out]);
  for (const [path, source] of inlineNumbers(modulesIn(out))) {
    writeFileSync(join(out, path), path.startsWith('components/') ? shortened(source, path.slice('components/'.length)) : source);
  }
}
