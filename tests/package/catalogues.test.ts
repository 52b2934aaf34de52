import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import type { Catalogue } from '../../components/shared/catalogue.js';
import { projectFolder } from '../install.js';

const folder = join(projectFolder, 'components');

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('-messages.ts') && !file.startsWith(`languages${sep}`))
  .sort();

const modules = await Promise.all(files.map(async (file) => [file, (await import(pathToFileURL(join(folder, file)).href)) as Readonly<Record<string, Catalogue>>] as const));

describe('the English catalogues', () => {
  it('are found', () => assert.ok(files.length > 20, files.join()));

  // A translation is one list for all widgets of a page: a key of two meanings would be told wrong in one of them.
  it('give a key one text, in whichever file it stands', () => {
    const texts = new Map<string, string>();
    const odd = modules.flatMap(([file, catalogues]) =>
      Object.values(catalogues).flatMap((catalogue) =>
        Object.entries(catalogue).flatMap(([key, text]) => {
          const before = texts.get(key) ?? text;
          texts.set(key, text);
          return before === text ? [] : [`${file} ${key}`];
        }),
      ),
    );
    assert.deepEqual(odd, []);
  });
});
