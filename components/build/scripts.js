/** The classic scripts: each one file that opens from a folder and needs no loader. */
import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { minify } from 'terser';
import { projectFolder } from './run.js';

/** The daily work of the watch. */
export const sights = ['amplitude', 'azimuth', 'transit', 'variation', 'conversion', 'ship'];

const sources = join(projectFolder, 'components');

/** Folders with a `define.ts`, here or in a folder of here: widgets, or languages. */
function defined(folder = '.') {
  return readdirSync(join(sources, folder)).filter((name) => existsSync(join(sources, folder, name, 'define.ts'))).sort();
}

/**
 * In what order widgets are defined. The ship first: those inside one find her at once; told of her
 * later they would be reckoned and drawn twice. The rest by what they share: like beside like packs
 * better (1.5 kB in 250).
 */
const order = ['ship', 'record', 'swing', 'deviation-card', 'deviation-curve', 'iron', 'conversion', 'transit', 'amplitude', 'azimuth', 'variation', 'drill', 'field-map'];

const defining = (names) => [...names].sort((one, other) => order.indexOf(one) - order.indexOf(other)).map((name) => `${name}/define.js`);

/** What each script holds, by the modules it is made of. */
const scripts = {
  'lubberline.js': defining(defined()),
  // Everything but the map of the field.
  'lubberline-without-map.js': defining(defined().filter((name) => name !== 'field-map')),
  // No charts, no map, no exercises.
  'lubberline-sights.js': defining(sights),
  // Exercises alone.
  'lubberline-drill.js': defining(['drill']),
  // For the lessons of a course package, after the first or the drill's.
  'lubberline-course.js': ['lms/course-page.js'],
};

const options = {
  absWorkingDir: projectFolder,
  bundle: true,
  minify: true,
  format: 'iife',
  // The oldest whose optional chaining esbuild trusts; the modules hold no static blocks, which come later.
  target: ['chrome91', 'firefox102'],
  conditions: ['production'],
  legalComments: 'none',
  banner: { js: '/*! Lubberline, MIT licence; the packages within: third-party-notices.txt */' },
  logLevel: 'warning',
  metafile: true,
  write: false,
};

/** Terser's looks take three bytes in a hundred, the third and fourth 0.4 kB of the largest script. In ASCII, whatever letters the page is written in. */
const shortened = { ecma: 2020, compress: { passes: 4 }, format: { ascii_only: true, comments: /^!/ } };

/** Like beside like packs better, a window of gzip being 32 kB: first words, then styles, what is foreign, and the sums. */
const groups = [/messages\.js$/, /styles\.js$/, /node_modules\/(?!\.)/, /\/core\//];

/** Resolves what is asked for by its place, and has it stay where it is asked for. */
const inPlace = {
  name: 'in-place',
  setup({ onResolve }) {
    onResolve({ filter: /^in-place:/ }, ({ path }) => ({ path: path.slice('in-place:'.length), sideEffects: true }));
  },
};

/** The modules evaluated when the script is: not those it imports late. */
function evaluated({ inputs, outputs }) {
  const reached = new Set();
  const visit = (path) => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const { path: next, kind } of inputs[path]?.imports ?? []) if (kind === 'import-statement') visit(next);
  };
  for (const { entryPoint } of Object.values(outputs)) visit(entryPoint);
  return reached;
}

/** Bundles modules into a script; resolves to what it is made of, as esbuild tells it. */
async function bundle(out, name, entries) {
  const asked = entries.map((entry) => `import './${entry}';`);
  const made = (lines, plugins) => build({ ...options, plugins, stdin: { contents: lines.join('\n'), resolveDir: join(out, 'components'), sourcefile: name }, outfile: join(out, name) });
  const { metafile } = await made(asked, []);
  const [{ inputs }] = Object.values(metafile.outputs);
  const used = [...evaluated(metafile)].filter((path) => inputs[path]?.bytesInOutput > 0);
  const ordered = groups.flatMap((group) => used.filter((path) => group.test(path)));
  const bundled = await made([...ordered.map((path) => `import 'in-place:${join(projectFolder, path)}';`), ...asked], [inPlace]);
  const { code } = await minify(bundled.outputFiles[0].text, shortened);
  mkdirSync(dirname(join(out, name)), { recursive: true });
  writeFileSync(join(out, name), code);
  return bundled.metafile;
}

/** Makes the scripts from the modules in a folder; resolves to what each is made of. */
export async function buildScripts(out) {
  const all = { ...scripts, ...Object.fromEntries(defined('languages').map((language) => [`languages/${language}.js`, [`languages/${language}/define.js`]])) };
  const made = [];
  for (const [name, entries] of Object.entries(all)) made.push(await bundle(out, name, entries));
  return made;
}
