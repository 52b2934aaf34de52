import assert from 'node:assert/strict';
import { test } from 'node:test';
import { killWhileWriting } from '../soak/kill-while-writing.js';
import { serveRecordPage } from '../soak/record-page.js';

test('five kills of the browser while it writes: every confirmed entry is there, the chain is whole, no false alarm', { timeout: 180_000 }, async () => {
  const page = await serveRecordPage();
  try {
    const kills = await killWhileWriting(page.address, [40, 900, 300, 1300, 600]);
    for (const kill of kills) {
      assert.deepEqual([kill.lost, kill.whole, kill.alarm], [0, true, false], JSON.stringify(kill));
      assert.ok(kill.found >= kill.confirmed);
    }
    assert.ok((kills[4]?.confirmed ?? 0) > 50, `only ${kills[4]?.confirmed} entries were confirmed at all`);
  } finally {
    page.close();
  }
});
