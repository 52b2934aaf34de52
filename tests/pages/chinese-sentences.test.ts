/** Chinese sets no space behind its full stop: wherever a widget strings sentences together, the words between them come from the catalogue. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { scene, subjects } from '../support/scenes.js';
import type { Stage } from '../support/stage.js';
import { openStage } from './open-stage.js';
import type { OpenStage } from './open-stage.js';

/** A mark of Chinese that has its own room, and a space behind it; what stands in a line of its own ends with it. */
const loose = /.{0,12}[。；：，、！？] +\S.{0,8}/gu;

describe('sentences in Chinese', () => {
  let opened: OpenStage;
  let stage: Stage;

  before(async () => {
    opened = await openStage(1280);
    stage = opened.stage;
    await stage.page.evaluate(async () => {
      await import(new URL('/dist/languages/zh.js', location.href).href);
      document.documentElement.lang = 'zh';
    });
  });

  after(() => opened.close());

  it('would be found', () => assert.deepEqual('超出范围。 可输入：0至90°。'.match(loose), ['超出范围。 可输入：0至90°']));

  for (const tag of Object.keys(subjects)) {
    it(`stand close in ${tag}`, async () => {
      const found: string[] = [];
      for (const state of ['empty', 'refused', 'answered', 'warned'] as const) {
        // The buttons of a drill are pressed by their English words.
        await stage.show({ ...scene(tag, state), press: [] });
        const lines = await stage.page.evaluate(() => {
          const root = document.querySelector('#stage > *')?.shadowRoot;
          // As it is shown, each block on lines of its own; what is for the ear alone is left out.
          return [...(root?.querySelectorAll<HTMLElement>('p:not(.spoken), li, td, summary, output, figcaption') ?? [])].map((each) => each.innerText);
        });
        assert.ok(lines.some((line) => /\p{Script=Han}/u.test(line)), state);
        found.push(...lines.flatMap((line) => line.match(loose) ?? []));
      }
      assert.deepEqual([...new Set(found)], []);
    });
  }
});
