/** What README and the recipes tell people to copy is copied here, and has to work. */
import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { build } from 'esbuild';
import { strictPolicy } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { siteOf } from './hosts/host-site.js';
import { assertPrintedAnswer, typePrintedSight } from './hosts/printed-sight.js';
import { sharedBrowser, visit, whileServed } from './hosts/try-host.js';

interface Example {
  readonly name: string;
  readonly language: string;
  readonly text: string;
}

const read = (path: string): string => readFileSync(join(projectFolder, path), 'utf8');

function fenced(path: string): Example[] {
  return [...read(path).matchAll(/^```(html|js)\n([\s\S]*?)^```$/gm)].map(([, language = '', text = ''], index) => ({ name: `${path}, example ${index + 1}`, language, text }));
}

/** `<pre data-example="html">` of a page holds what a reader copies. */
function inPage(path: string): Example[] {
  if (!existsSync(join(projectFolder, path))) return [];
  const plain = (html: string): string => html.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&');
  return [...read(path).matchAll(/<pre data-example="(html|js)">([\s\S]*?)<\/pre>/g)].map(([, language = '', text = ''], index) => ({
    name: `${path}, example ${index + 1}`,
    language,
    text: plain(text),
  }));
}

const examples = [...fenced('README.md'), ...['recipes', 'provider', 'administrator'].flatMap((name) => inPage(`demo/guides/${name}.html`))];

const heard = '<output id="heard" hidden></output>\n<script src="hear.js" defer></script>\n';

/** A page around what is only a part of one; a script goes into a file of its own, bundled where it imports. */
async function pageOf({ language, text }: Example): Promise<{ html: string; script: string | null }> {
  const start = '<!doctype html>\n<html lang="en">\n<meta charset="utf-8">\n<title>Example</title>\n';
  const classic = '<script src="lubberline.js" defer></script>\n';
  if (language === 'html') {
    const whole = text.startsWith('<!doctype') ? text.replace(/<\/html>\s*$/, '') : `${start}${text.includes('lubberline.js"') ? '' : classic}${text}`;
    return { html: whole + heard, script: null };
  }
  const imports = /^import /m.test(text);
  // What imports but does not register stands in a page that registers, as it would in its reader's.
  const contents = imports && !text.includes('define.js') ? `import 'lubberline/components/amplitude/define.js';\n${text}` : text;
  const { outputFiles } = await build({ stdin: { contents, resolveDir: projectFolder }, bundle: true, write: false, format: 'iife', conditions: ['production'], logLevel: 'silent' });
  const html = `${start}${imports ? '' : classic}<script src="example.js" defer></script>\n<lubber-amplitude></lubber-amplitude>\n${heard}`;
  return { html, script: outputFiles[0]?.text ?? '' };
}

describe('the examples of README and recipes', () => {
  const browser = sharedBrowser('chromium');

  it('are found', () => {
    assert.ok(fenced('README.md').filter(({ language }) => language === 'html').length >= 2);
    assert.ok(fenced('README.md').filter(({ language }) => language === 'js').length >= 2);
  });

  for (const example of examples) {
    it(`${example.name} (${example.language}) answers under a strict policy, without a complaint or a request elsewhere`, async () => {
      const site = siteOf('plain');
      const { html, script } = await pageOf(example);
      site.write('index.html', html);
      if (script !== null) site.write('example.js', script);
      try {
        await whileServed(site.folder, strictPolicy, async (address) => {
          const { page, frame, complaints, requests } = await visit(await browser(), `${address}index.html`);
          const said: string[] = [];
          page.on('console', (message) => said.push(message.text()));
          await typePrintedSight(page, frame);
          await assertPrintedAnswer(frame);
          assert.deepEqual(complaints, []);
          assert.deepEqual(requests.filter((name) => !['index.html', 'lubberline.js', 'hear.js', 'example.js'].includes(name)), []);
          if (example.text.includes('console.log')) assert.ok(said.some((line) => line.startsWith('lubber-amplitude')), 'the page has heard');
          await page.close();
        });
      } finally {
        site.remove();
      }
    });
  }
});
