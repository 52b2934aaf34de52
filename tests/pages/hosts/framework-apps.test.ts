import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { copyFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import react from '@vitejs/plugin-react';
import vue from '@vitejs/plugin-vue';
import type { Page } from 'puppeteer-core';
import { build } from 'vite';
import type { PluginOption } from 'vite';
import { projectFolder } from '../../install.js';
import { browserNames } from '../browser.js';
import { until } from '../until.js';
import { angular } from './angular-plugin.js';
import { siteOf } from './host-site.js';
import type { HostSite } from './host-site.js';
import { assertPrintedAnswer, typePrintedSight } from './printed-sight.js';
import { sharedBrowser, visit, whileServed } from './try-host.js';

/** Vue must be told which tags are no components of its own. */
const isCustomElement = (tag: string): boolean => tag.startsWith('lubber-');

const apps: readonly { readonly name: string; readonly packages: readonly string[]; readonly plugins: (folder: string) => PluginOption[] }[] = [
  { name: 'react-app', packages: ['react', 'react-dom'], plugins: () => [react()] },
  { name: 'vue-app', packages: ['vue'], plugins: () => [vue({ template: { compilerOptions: { isCustomElement } } })] },
  { name: 'svelte-app', packages: ['svelte'], plugins: () => [svelte({ configFile: false })] },
  { name: 'angular-app', packages: ['@angular/common', '@angular/core', '@angular/platform-browser', 'rxjs', 'tslib'], plugins: (folder) => [angular(folder)] },
];

const policy = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'none'";

const textOf = (page: Page, id: string): Promise<string> => page.evaluate((sought) => document.getElementById(sought)?.textContent ?? '', id);

/** Presses a button of the app by the keyboard. */
async function press(page: Page, id: string): Promise<void> {
  await page.focus(`#${id}`);
  await page.keyboard.press('Enter');
}

/** The courses in their order, with what stands in the field of each. */
const courses = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...document.querySelectorAll('lubber-conversion')].map((one) => `${one.id} ${one.shadowRoot?.querySelector<HTMLInputElement>('#heading')?.value}`));

const browsers = browserNames.map((name) => ({ name, open: sharedBrowser(name) }));

for (const { name, packages, plugins } of apps) {
  describe(`an app by its own tools: ${name}`, () => {
    let site: HostSite;
    const built = (): string => `${site.folder}built/`;

    before(async () => {
      site = siteOf(name, []);
      site.install(...packages);
      await build({
        root: site.folder,
        configFile: false,
        logLevel: 'error',
        plugins: plugins(site.folder),
        base: './',
        build: { outDir: built(), modulePreload: { polyfill: false }, reportCompressedSize: false },
      });
    });
    after(() => site.remove());

    for (const { name: browserName, open } of browsers) {
      it(`works in ${browserName}`, async () => {
        await whileServed(built(), policy, async (address) => {
          const { page, frame, complaints, requests } = await visit(await open(), `${address}index.html`);
          const typed = (field: string): Promise<string | undefined> => page.evaluate((id) => document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector<HTMLInputElement>(id)?.value, field);
          assert.deepEqual([await typed('#heightOfEye'), await typed('#variation')], ['18', '11.0E'], 'numbers are taken as properties');
          await press(page, 'send');
          assert.equal(await textOf(page, 'sent'), '', 'no result, nothing is sent');
          await page.evaluate(() => (document.activeElement as HTMLElement).blur());
          await typePrintedSight(page, frame);
          await assertPrintedAnswer(frame);
          await until('the app shows what it has heard', async () => (await textOf(page, 'told')) === 'Last result by lubber-amplitude');
          await press(page, 'send');
          await until('the form gives the result', async () => /"deviation":1\.4/.test(await textOf(page, 'sent')));

          const curve = (): Promise<string> => page.evaluate(() => document.querySelector('lubber-deviation-curve')?.shadowRoot?.querySelector('.answer')?.textContent ?? '');
          for (const shown of [true, false, true]) {
            await press(page, 'show');
            await until(shown ? 'the curve comes, with the card it was given' : 'the curve goes', async () => /\d° [EW]/.test(await curve()) === shown);
          }

          assert.deepEqual(await courses(page), ['course-1 100.0', 'course-2 200.0', 'course-3 300.0']);
          await page.evaluate(() => {
            const field = document.querySelector('#course-1')!.shadowRoot!.querySelector<HTMLInputElement>('#heading')!;
            field.focus();
            field.select();
          });
          await page.keyboard.type('123');
          await press(page, 'turn');
          await until('the order turns, and what was typed goes along', async () => String(await courses(page)) === 'course-3 300.0,course-2 200.0,course-1 123');

          const files = readdirSync(built(), { recursive: true, encoding: 'utf8' }).map((file) => file.split('/').pop() ?? '');
          assert.deepEqual(requests.filter((request) => !files.includes(request)), [], 'nothing but files of the app is asked for');
          assert.deepEqual(complaints, []);
          await page.close();
        });
      });
    }
  });
}

describe('the types for the frameworks', () => {
  it('know tags, properties and events, and refuse what is none', () => {
    const site = siteOf('framework-types', []);
    copyFileSync(join(projectFolder, 'tests', 'pages', 'hosts', 'react-app', 'watch-log.tsx'), join(site.folder, 'watch-log.tsx'));
    site.write('tags.ts', "import 'lubberline/define.js';");
    site.install('react', '@types/react', 'vue', 'svelte');
    const { stdout } = spawnSync(join(projectFolder, 'node_modules', '.bin', 'tsc'), ['-p', site.folder], { encoding: 'utf8' });
    assert.equal(stdout, '');
    site.remove();
  });
});
