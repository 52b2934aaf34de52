import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { LitElement } from 'lit';
import { projectFolder } from '../install.js';
import { widgets } from '../support/package-entries.js';

interface Named {
  readonly name: string;
  readonly description?: string;
}

interface Attribute extends Named {
  /** In the manifest. */
  readonly type?: { readonly text: string };
  /** In the data for editors. */
  readonly values?: readonly Named[];
}

interface Declaration extends Named {
  readonly tagName?: string;
  readonly superclass?: { readonly name: string; readonly module?: string; readonly package?: string };
  readonly attributes?: readonly Attribute[];
  readonly members?: readonly (Named & { readonly privacy?: string })[];
  readonly events?: readonly (Named & { readonly type: { readonly text: string } })[];
  readonly slots?: readonly Named[];
  readonly cssParts?: readonly Named[];
  readonly cssProperties?: readonly Named[];
}

const inDist = (file: string): string => join(projectFolder, 'dist', file);
const json = (file: string): unknown => JSON.parse(readFileSync(inDist(file), 'utf8'));

const { modules } = json('custom-elements.json') as { readonly modules: readonly { readonly path: string; readonly declarations: readonly Declaration[] }[] };
const declared = new Map(modules.flatMap(({ declarations }) => declarations.flatMap((each) => (each.tagName ? [[each.tagName, each] as const] : []))));

const components = join(projectFolder, 'components');

/** All that a widget draws with: its own source and what that uses of the others. */
async function sourceOf(widget: string): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: projectFolder,
    entryPoints: [`components/${widget}/define.ts`],
    bundle: true,
    packages: 'external',
    treeShaking: true,
    format: 'esm',
    write: false,
  });
  return outputFiles.map(({ text }) => text).join('\n');
}

const found = (texts: readonly string[], pattern: RegExp): string[] => [...new Set(texts.flatMap((text) => [...text.matchAll(pattern)].map(([, name = '']) => name)))].sort();
const names = (list: readonly Named[] | undefined): string[] => (list ?? []).map(({ name }) => name).sort();

/** Which calls in a widget's own sources fire which event. */
const firing = {
  'lubber-result': /new LubberResultEvent\(|resultDetail\(\) \{/,
  'lubber-record-request': /\.offerRecord\(/,
  'lubber-score': /new LubberScoreEvent\(/,
} as const;

it('the manifest names the widgets and nothing else as elements', () => {
  assert.deepEqual([...declared.keys()].sort(), widgets.map((name) => `lubber-${name}`).sort());
});

for (const widget of widgets) {
  const tag = `lubber-${widget}`;
  const declaration = declared.get(tag);
  const source = await sourceOf(widget);
  const own = readdirSync(join(components, widget)).map((file) => readFileSync(join(components, widget, file), 'utf8'));
  const exported = Object.values((await import(pathToFileURL(inDist(`components/${widget}/${widget}.js`)).href)) as Readonly<Record<string, typeof LitElement>>);
  const widgetClass = exported.find((each) => each.observedAttributes?.length) as typeof LitElement;

  describe(`the manifest of ${tag}`, () => {
    it('holds every attribute the class reacts to, and no other', () => {
      assert.deepEqual(names(declaration?.attributes), [...widgetClass.observedAttributes].sort());
    });

    it('holds every event that is fired', () => {
      const fired = Object.entries(firing).flatMap(([event, call]) => (own.some((text) => call.test(text)) ? [event] : []));
      assert.deepEqual(names(declaration?.events), fired.sort());
    });

    it('holds every part and slot that is drawn', () => {
      assert.deepEqual(names(declaration?.cssParts), found([source], /\bpart="([\w-]+)"/g));
      assert.equal(declaration?.slots?.length ?? 0, found(own, /(<slot)/g).length);
    });

    it('holds every token the page may set', () => {
      const styles = widgetClass.elementStyles.map((each) => ('cssText' in each ? each.cssText : ''));
      assert.deepEqual(names(declaration?.cssProperties), found(styles, /var\((--lubber-[\w-]+)/g));
    });

    it('describes all of it in words, and nothing private', () => {
      const all = [declaration ?? { name: tag }, ...(['attributes', 'members', 'events', 'slots', 'cssParts', 'cssProperties'] as const).flatMap((kind) => declaration?.[kind] ?? [])];
      assert.deepEqual(all.filter(({ description = '' }) => description.length < 4).map(({ name }) => name), []);
      assert.deepEqual((declaration?.members ?? []).filter(({ name, privacy }) => /^[#_]/.test(name) || privacy).map(({ name }) => name), []);
    });

    it('gives events the types the package exports', () => {
      for (const { name, type } of declaration?.events ?? []) {
        assert.equal(type.text, `Lubber${name.slice('lubber-'.length).replace(/(?:^|-)(\w)/g, (_, letter: string) => letter.toUpperCase())}Event`);
      }
    });

    it('is in the data for editors', () => {
      const code = json('vscode.html-custom-data.json') as { readonly tags: readonly (Named & { readonly attributes: readonly Named[] })[] };
      assert.deepEqual(names(code.tags.find(({ name }) => name === tag)?.attributes), names(declaration?.attributes));
      const web = json('web-types.json') as { readonly contributions: { readonly html: { readonly elements: readonly (Named & { readonly attributes: readonly Named[] })[] } } };
      assert.deepEqual(names(web.contributions.html.elements.find(({ name }) => name === tag)?.attributes), names(declaration?.attributes));
    });
  });
}

// A choice whose words are a constant list of the sources, as `['body', 'almanac', 'altitude'] as const`, was a `string` to editors.
it('the manifest writes the words of a choice out, for editors too', () => {
  const code = json('vscode.html-custom-data.json') as { readonly tags: readonly (Named & { readonly attributes: readonly Attribute[] })[] };
  const choices: readonly (readonly [tag: string, attribute: string, words: readonly string[]])[] = [
    ['lubber-amplitude', 'moment', ['celestial', 'centre', 'upper-limb', 'lower-limb']],
    ['lubber-azimuth', 'method', ['body', 'almanac', 'altitude']],
    ['lubber-azimuth', 'altitude-of', ['true', 'lower', 'centre', 'upper']],
    ['lubber-conversion', 'heading-by', ['compass', 'magnetic', 'true', 'gyro']],
    ['lubber-conversion', 'deviation-source', ['value', 'card', 'table', 'coefficients']],
    ['lubber-swing', 'method', ['deviation', 'known-object', 'unknown-object', 'sun', 'transit', 'shore-compass', 'gyro']],
    ['lubber-swing', 'headings', ['8', '16', '24', '36']],
    ['lubber-swing', 'limit', ['flag-five', 'after-adjustment', 'in-service', 'panama-canal']],
    ['lubber-swing', 'theme', ['auto', 'day', 'dusk', 'night']],
    ['lubber-deviation-card', 'every', ['10', '15']],
    ['lubber-ship', 'card-form', ['table', 'coefficients']],
    ['lubber-record', 'entry', ['observation', 'no-observation', 'event']],
    ['lubber-record', 'bearing-by', ['gyro', 'standard', 'steering']],
  ];
  for (const [tag, attribute, words] of choices) {
    const inManifest = declared.get(tag)?.attributes?.find(({ name }) => name === attribute);
    assert.equal(inManifest?.type?.text, words.map((word) => `'${word}'`).join(' | '), `${tag} ${attribute}`);
    const inEditor = code.tags.find(({ name }) => name === tag)?.attributes.find(({ name }) => name === attribute);
    assert.deepEqual(inEditor?.values?.map(({ name }) => name), words, `${tag} ${attribute}`);
  }
});
