/** The files of a package, each by its path from the root: those of the pages and of the built scripts. */
import { existsSync, readFileSync } from 'node:fs';
import { lessons, pageOf } from './lessons.js';

const root = new URL('../../', import.meta.url);

/** What every lesson needs. */
export const sharedFiles = [
  'demo/course/course.css',
  'demo/course/index.html',
  'demo/header.js',
  'demo/mark.svg',
  'demo/pages.css',
  'demo/theme.js',
  'dist/lubberline-course.js',
  'dist/lubberline.js',
  'dist/third-party-notices.txt',
  'LICENSE',
];

/** The other pages of the demo are not in a package, nor the ways to them. */
const withoutNavigation = (html) =>
  html.replace(/^ *<script src="\.\.\/navigation\.js"><\/script>\n/m, '').replace(/^ *<p data-demo>.*<\/p>\n/m, '');

function contentsOf(path) {
  const contents = readFileSync(new URL(path, root));
  return path.endsWith('.html') ? Buffer.from(withoutNavigation(contents.toString('utf8'))) : contents;
}

/** Their contents by path; throws where the scripts are not built. */
export function packageFiles() {
  const paths = [...lessons.map(pageOf), ...sharedFiles];
  const missing = paths.filter((path) => !existsSync(new URL(path, root)));
  if (missing.length > 0) throw new Error(`Not there: ${missing.join(', ')}. Run npm run build first.`);
  return Object.fromEntries(paths.map((path) => [path, contentsOf(path)]));
}
