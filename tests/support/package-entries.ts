import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from '../install.js';

interface Entry {
  /** As it is imported: `lubberline/core`. */
  readonly name: string;
  /** As `exports` has it, stars replaced: `./core`. */
  readonly path: string;
  /** What it leads to. */
  readonly files: readonly string[];
}

const folders = (of: string): string[] => readdirSync(join(projectFolder, 'components', of), { withFileTypes: true }).flatMap((each) => (each.isDirectory() ? [each.name] : []));

/** The widgets by the names of their folders. */
export const widgets = folders('.').filter((name) => existsSync(join(projectFolder, 'components', name, 'define.ts')));

/** The languages there are besides English. */
export const languages = folders('languages').filter((name) => existsSync(join(projectFolder, 'components', 'languages', name, 'define.ts')));

/** Every name that may stand in for the star of an entry. */
const stars: Readonly<Record<string, readonly string[]>> = { './components/': widgets, './languages/': languages, './lms/': ['scorm', 'cmi5', 'course-page'] };

const { exports } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as {
  readonly exports: Readonly<Record<string, string | Readonly<Record<'types' | 'default', string>>>>;
};

/** Every entry of the package. */
export const entries: readonly Entry[] = Object.entries(exports).flatMap(([entry, to]) => {
  const files = typeof to === 'string' ? [to] : [to.types, to.default];
  const names = entry.includes('*') ? (Object.entries(stars).find(([start]) => entry.startsWith(start))?.[1] ?? []) : [''];
  return names.map((name) => {
    const path = entry.replace('*', name);
    return { name: path.replace('.', 'lubberline'), path, files: files.map((file) => file.replaceAll('*', name)) };
  });
});
