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

/** Rewrites every module of a folder, given its text and its name there. */
function rewrite(folder, written) {
  for (const name of readdirSync(folder, { recursive: true })) {
    if (!name.endsWith('.js')) continue;
    const file = join(folder, name);
    writeFileSync(file, written(readFileSync(file, 'utf8'), name.replaceAll('\\', '/')));
  }
}

export function buildModules(out) {
  run('typescript/bin/tsc', ['-p', 'components/tsconfig.json', '--outDir', out]);
  rewrite(join(out, 'core'), inlineNumbers);
  rewrite(join(out, 'components'), (source, name) => {
    const short = plainStyles(minifyTemplates(litProperties(staticFields(inlineNumbers(source)))));
    return orderImports(packCatalogues(short, name));
  });
}
