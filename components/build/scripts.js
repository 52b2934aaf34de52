/** The classic scripts: each one file that opens from a folder and needs no loader. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { projectFolder } from './run.js';

/** What each script holds, by the modules it is made of. */
const scripts = {
  // Everything.
  'lubberline.js': ['define.js'],
  // The daily work of the watch: no charts, no map, no exercises.
  'lubberline-sights.js': ['amplitude/define.js', 'azimuth/define.js', 'transit/define.js', 'variation/define.js', 'conversion/define.js', 'ship/define.js'],
  // For the lessons of a course package, after the first.
  'lubberline-course.js': ['lms/course-page.js'],
};

/** Languages there are: folders with a `define.ts`. */
export function languages() {
  const folder = join(projectFolder, 'components', 'languages');
  return existsSync(folder) ? readdirSync(folder).filter((name) => existsSync(join(folder, name, 'define.ts'))).sort() : [];
}

/** Options all bundles share: Chromium 91 to 93 claim static blocks that they refuse, so the floor of the syntax is 90. */
export const bundling = {
  bundle: true,
  minify: true,
  target: ['chrome90', 'firefox102'],
  conditions: ['production'],
  logLevel: 'warning',
  metafile: true,
};

/** Makes the scripts from the modules in a folder; resolves to what each is made of, as esbuild tells it. */
export async function buildScripts(out) {
  const all = { ...scripts, ...Object.fromEntries(languages().map((language) => [`languages/${language}.js`, [`languages/${language}/define.js`]])) };
  const made = [];
  for (const [name, entries] of Object.entries(all)) {
    const { metafile } = await build({
      ...bundling,
      absWorkingDir: projectFolder,
      stdin: { contents: entries.map((entry) => `import './${entry}';`).join('\n'), resolveDir: join(out, 'components'), sourcefile: name },
      outfile: join(out, name),
      format: 'iife',
      legalComments: 'none',
      banner: { js: '/*! Lubberline, MIT licence; the packages within: third-party-notices.txt */' },
    });
    made.push(metafile);
  }
  return made;
}
