import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { textsOf } from '../../components/shared/catalogue-text.js';
import { projectFolder } from '../install.js';

const load = async (file: string): Promise<Record<string, object>> => (await import(pathToFileURL(join(projectFolder, file)).href)) as Record<string, object>;

const files = (readdirSync(join(projectFolder, 'components'), { recursive: true }) as string[]).filter((file) => file.endsWith('-messages.ts'));
const isTranslation = (file: string): boolean => file.startsWith('languages');
const madeOf = (file: string): string => `dist/components/${file.replace(/ts$/, 'js')}`;

test('every catalogue holds in the package what it holds in the source, in the same order', async () => {
  assert.ok(files.length > 60, `${files.length} catalogues`);
  let packed = 0;
  for (const file of files) {
    const [source, built] = [await load(`components/${file}`), await load(madeOf(file))];
    for (const name of Object.keys(source)) {
      const made = built[name] ?? {};
      assert.deepEqual(Object.entries(textsOf(made as Parameters<typeof textsOf>[0])), Object.entries(source[name] ?? {}), `${file}: ${name}`);
      assert.equal(Array.isArray(made), !isTranslation(file), `${file}: ${name}`);
    }
    if (!isTranslation(file) || readFileSync(join(projectFolder, madeOf(file)), 'utf8').includes('catalogueOf(')) packed += 1;
  }
  assert.ok(packed > 60, `${packed} of ${files.length} packed`);
});

// A script of everything read 2,000 texts before it drew the one widget of the page.
test('an English catalogue costs a page nothing until a text of it is asked for', async () => {
  const made = await Promise.all(files.filter((file) => !isTranslation(file)).map(async (file) => Object.entries(await load(madeOf(file)))));
  const parts = made.flat().flatMap(([name, list]) => [list].flat(Infinity).map((part) => [name, part] as const));
  assert.ok(parts.length > 30, `${parts.length} parts`);
  for (const [name, part] of parts) assert.equal(typeof part, 'string', name);
});
