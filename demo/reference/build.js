/** `node demo/reference/build.js`: writes a page for every widget of the manifest, and their index. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readDeclarations } from './declarations.js';
import { indexPage } from './index-page.js';
import { widgetPage } from './widget-page.js';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const manifestPath = `${dist}custom-elements.json`;

if (!existsSync(manifestPath)) {
  console.error('dist/ is not built. Run npm run build first.');
  process.exit(1);
}
const manifest = JSON.parse(readFileSync(manifestPath, 'utf8'));
const all = manifest.modules.flatMap(({ declarations = [] }) => declarations);
const widgets = all.filter(({ tagName }) => tagName);
const declarations = readDeclarations([`${dist}core`, `${dist}components`]);
const write = (name, page) => writeFileSync(new URL(name, import.meta.url), page);

for (const widget of widgets) write(`${widget.tagName}.html`, widgetPage(widget, declarations, all));
write('index.html', indexPage(widgets.sort((one, other) => one.tagName.localeCompare(other.tagName))));
