import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { projectFolder } from '../install.js';

const load = async (file: string): Promise<Record<string, unknown>> => (await import(pathToFileURL(join(projectFolder, file)).href)) as Record<string, unknown>;

test('every catalogue holds in the package what it holds in the source, in the same order', async () => {
  const files = (readdirSync(join(projectFolder, 'components'), { recursive: true }) as string[]).filter((file) => file.endsWith('-messages.ts'));
  assert.ok(files.length > 60, `${files.length} catalogues`);
  let packed = 0;
  for (const file of files) {
    const made = `dist/components/${file.replace(/ts$/, 'js')}`;
    const [source, built] = [await load(`components/${file}`), await load(made)];
    for (const name of Object.keys(source)) assert.deepEqual(Object.entries(built[name] as object), Object.entries(source[name] as object), `${file}: ${name}`);
    if (readFileSync(join(projectFolder, made), 'utf8').includes('catalogueOf(')) packed += 1;
  }
  assert.ok(packed > 60, `${packed} of ${files.length} packed`);
});
