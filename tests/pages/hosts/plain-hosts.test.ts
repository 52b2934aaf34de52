import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { strictPolicy } from '../../../demo/serve.js';
import { browserNames } from '../browser.js';
import { siteOf } from './host-site.js';
import type { HostSite } from './host-site.js';
import { assertGoodGuest, sharedBrowser, visit, whileServed } from './try-host.js';

const files = ['index.html', 'lubberline.js', 'hear.js'];

for (const name of browserNames) {
  describe(`a plain page, in ${name}`, () => {
    const browser = sharedBrowser(name);
    let site: HostSite;
    before(() => (site = siteOf('plain')));
    after(() => site.remove());

    it('opened from a folder', async () => {
      const seen = await visit(await browser(), pathToFileURL(`${site.folder}index.html`).href);
      await assertGoodGuest(seen, { files });
      await seen.page.close();
    });

    it('of a host by its name in a plain network, which is no secure context', async () => {
      await whileServed(site.folder, '', async (address) => {
        const seen = await visit(await browser(), `${address.replace('127.0.0.1', 'shipnet')}index.html`);
        assert.equal(await seen.frame.evaluate(() => isSecureContext), false);
        await assertGoodGuest(seen, { files });
        await seen.page.close();
      });
    });

    for (const [what, policy] of [
      ['and Trusted Types', "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'none'; require-trusted-types-for 'script'"],
      ['that names the one policy of types', strictPolicy],
    ] as const) {
      it(`under a policy that allows its own files only, ${what}`, async () => {
        await whileServed(site.folder, policy, async (address) => {
          const seen = await visit(await browser(), `${address}index.html`);
          await assertGoodGuest(seen, { files });
          await seen.page.close();
        });
      });
    }
  });
}
