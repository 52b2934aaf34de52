import assert from 'node:assert/strict';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { projectFolder } from '../install.js';

const tables: readonly (readonly [file: string, name: string])[] = [
  ...['wmm2025', 'wmm2020', 'wmm2015v2', 'wmm2015'].map((name) => [`field/${name}-coefficients`, `${name}Coefficients`] as const),
  ...['earth', 'moon', 'venus', 'mars', 'jupiter', 'saturn'].map((name) => [`sky/${name}-series`, `${name}Series`] as const),
  ['sky/star-catalogue', 'starCatalogue'],
  ['sky/star-magnitudes', 'starMagnitudes'],
  ['sky/nutation-terms', 'nutationTerms'],
];

const load = async (folder: string, file: string): Promise<Record<string, unknown>> =>
  (await import(pathToFileURL(join(projectFolder, folder, file)).href)) as Record<string, unknown>;

describe('the long tables as the package holds them', () => {
  for (const [file, name] of tables) {
    it(`${name}: figure for figure those of the source`, async () => {
      const [source, packed] = [(await load('core', `${file}.ts`))[name], (await load('dist/core', `${file}.js`))[name]];
      assert.ok(JSON.stringify(source).length > 200);
      assert.deepEqual(packed, source);
      assert.deepEqual(Object.keys(packed as object), Object.keys(source as object));
    });
  }

  // Four models and the Moon were read wherever a widget was loaded, for a page that asked for one of them or none.
  it('are read when they are asked for', async () => {
    for (const [file, name] of tables.filter(([path]) => /-(coefficients|series)$/.test(path))) {
      const packed = (await load('dist/core', `${file}.js`))[name] as object;
      for (const [property, { value }] of Object.entries(Object.getOwnPropertyDescriptors(packed))) assert.ok(value === undefined || typeof value === 'number', `${name}.${property}`);
    }
  });
});
