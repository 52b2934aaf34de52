import assert from 'node:assert/strict';
import { test } from 'node:test';
import { killWhileWriting } from '../soak/kill-while-writing.js';
import { serveRecordPage } from '../soak/record-page.js';

test('five kills of the browser while it writes: every confirmed entry is there, the chain is whole, no false alarm', { timeout: 900_000 }, async () => {
  const page = await serveRecordPage();
  try {
    // The first as soon as it writes at all; the others in the midst of it, however slow the machine is.
    const kills = await killWhileWriting(page.address, [
      { after: 40, least: 0 },
      { after: 900, least: 16 },
      { after: 300, least: 8 },
      { after: 1300, least: 20 },
      { after: 600, least: 12 },
    ]);
    for (const kill of kills) {
      assert.deepEqual([kill.lost, kill.whole, kill.alarm], [0, true, false], JSON.stringify(kill));
      assert.ok(kill.found >= kill.confirmed);
    }
  } finally {
    page.close();
  }
});
