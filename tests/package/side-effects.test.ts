import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { build } from 'esbuild';
import { projectFolder } from '../install.js';

/** What a user's bundler leaves of a line of his. */
async function left(code: string): Promise<string> {
  const { outputFiles } = await build({ stdin: { contents: code, resolveDir: projectFolder }, bundle: true, minifyWhitespace: true, treeShaking: true, format: 'esm', conditions: ['production'], write: false });
  return outputFiles.map(({ text }) => text).join('');
}

const defining = (tag: string): RegExp => new RegExp(`["']${tag}["'],`);

describe('what a bundler may leave out', () => {
  it('a class asked for and not used: all of it', async () => {
    assert.equal(await left("import { LubberAmplitude } from 'lubberline/components/amplitude.js'; import { LubberSwing } from 'lubberline';"), '');
  });

  it('a class in use: its registering, and the other widgets', async () => {
    const code = await left("import { LubberAmplitude } from 'lubberline'; console.log(LubberAmplitude);");
    assert.deepEqual([/LubberAmplitude=class/, defining('lubber-amplitude'), /LubberSwing=class/].map((pattern) => pattern.test(code)), [true, false, false]);
  });

  it('nothing of an entry that registers', async () => {
    assert.ok(defining('lubber-amplitude').test(await left("import 'lubberline/components/amplitude/define.js';")));
    const all = await left("import 'lubberline/define.js';");
    for (const tag of ['lubber-amplitude', 'lubber-swing', 'lubber-field-map']) assert.ok(defining(tag).test(all), tag);
  });

  it('nothing of an entry that adds a language, and all of a catalogue not used', async () => {
    assert.ok((await left("import 'lubberline/languages/es/define.js';")).includes('lubberline.words'));
    assert.equal(await left("import { spanish } from 'lubberline/languages/es.js';"), '');
  });

  it('core but for what is called', async () => {
    const code = await left("import { wrap360 } from 'lubberline/core'; console.log(wrap360(-1));");
    assert.ok(code.length < 2000, `${code.length} characters`);
  });

  it('nothing of the page of a course', async () => {
    assert.ok((await left("import 'lubberline/lms/course-page.js';")).length > 10_000);
  });
});
