/** A set of exercises worked through by the Tab key, arrows, letters and Enter alone, with answers right and wrong. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { exercisesOf } from '../../components/drill/drill-order.js';
import type { DrillState } from '../../components/drill/drill-state.js';
import type { Question } from '../../core/answer/question.js';
import { serve } from '../../demo/serve.js';
import { solve } from '../core/drill/solve.js';
import { Stage } from '../support/stage.js';
import { openBrowser } from './browser.js';
import { choose, tabTo } from './keyboard-hand.js';

type Drill = HTMLElement & { readonly state: DrillState; readonly result: { scaled: number; passed: boolean; complete: boolean }; updateComplete: Promise<unknown> };

const TAG = 'lubber-drill';

describe('a drill worked through by keyboard alone', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  let page: Page;
  let stage: Stage;

  before(async () => {
    server = await serve();
    browser = await openBrowser();
    stage = await Stage.open(browser, server.address);
    page = stage.page;
  });

  after(async () => {
    await browser.close();
    server.server.close();
  });

  const begin = async (attributes: string): Promise<void> => {
    await stage.show({ tag: TAG, state: 'answered', html: `<lubber-drill ${attributes}></lubber-drill>`, press: [] }, { open: false });
  };
  const state = (): Promise<DrillState> => page.evaluate((tag) => (document.querySelector(tag) as Drill).state, TAG);
  const result = (): Promise<Drill['result']> => page.evaluate((tag) => (document.querySelector(tag) as Drill).result, TAG);
  const words = (): Promise<string> => page.evaluate((tag) => (document.querySelector(tag)?.shadowRoot?.textContent ?? '').replace(/\s+/g, ' '), TAG);

  /** What has the focus, by id or words; empty where it was lost to the page. */
  const held = async (): Promise<string> => {
    await stage.settle(2);
    return page.evaluate((tag) => {
      const element = document.querySelector(tag)?.shadowRoot?.activeElement;
      return element ? element.id || (element as HTMLInputElement).name || (element.textContent ?? '').trim() : '';
    }, TAG);
  };

  /** Goes by Tab to a button of these words, and presses Enter. */
  const press = async (label: string): Promise<void> => {
    const here = (): Promise<string> => page.evaluate((tag) => (document.querySelector(tag)?.shadowRoot?.activeElement?.textContent ?? '').trim(), TAG);
    for (let step = 0; step < 250 && (await here()) !== label; step += 1) await page.keyboard.press('Tab');
    assert.equal(await here(), label);
    await page.keyboard.press('Enter');
  };

  /** As an officer writes it. */
  const written = (question: Question, value: number): string => {
    if (question.is !== 'choice' && question.form === 'bearing') return (((value % 360) + 360) % 360).toFixed(1).padStart(5, '0');
    const size = Math.abs(value).toFixed(1);
    return question.is !== 'choice' && question.form === 'signed' ? `${value < 0 ? '-' : '+'}${size}` : `${size}${value < 0 ? 'W' : 'E'}`;
  };

  /** Fills in the results asked for, right or off by so many degrees, a choice the other way. */
  const fill = async (off: number): Promise<void> => {
    const at = await state();
    const exercise = exercisesOf(at)[at.at];
    assert.ok(exercise);
    // Worked out from what the page tells, by the arithmetic of the tests.
    const answers = solve(exercise);
    for (const question of exercise.asked.filter(({ part }) => part === 'result')) {
      const { code } = question;
      if (question.is === 'choice') {
        const other = question.options.find((option) => option !== String(answers[code])) ?? '';
        const wanted = off === 0 ? String(answers[code]) : other;
        await tabTo(page, TAG, `answer-${code}`);
        await page.keyboard.press('Space');
        await choose(page, TAG, `answer-${code}`, wanted);
        continue;
      }
      await tabTo(page, TAG, `answer-${code}`);
      await page.keyboard.down('Control');
      await page.keyboard.press('a');
      await page.keyboard.up('Control');
      await page.keyboard.type(written(question, Number(answers[code]) + off));
    }
  };

  it('right, wrong and right at the second attempt, shown: marked, told, and on to the next each time', async () => {
    await begin('kind="card polarity coefficients chart-variation" level="2" count="4" seed="4711" attempts="2"');
    // The first: right.
    await fill(0);
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'onward');
    assert.match(await words(), /Right\./);
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'title');
    // The second: wrong, an attempt is left and what was answered stands; then right.
    await fill(20);
    await page.keyboard.press('Enter');
    assert.notEqual(await held(), '', 'after a wrong answer');
    assert.match(await words(), /Not right\..*One attempt left\./);
    await fill(0);
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'onward');
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'title');
    // The third: wrong twice.
    await fill(20);
    await page.keyboard.press('Enter');
    await stage.settle();
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'onward');
    assert.match(await words(), /No attempt is left\./);
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'title');
    // The fourth: hint, then shown.
    await press('Hint');
    assert.notEqual(await held(), '', 'after the hint');
    await press('Show the answer');
    assert.equal(await held(), 'onward');
    await page.keyboard.press('Enter');
    assert.equal(await held(), 'summary');
    const { exercises } = await state();
    assert.deepEqual(exercises.map(({ tries, shown }) => [tries, shown]), [[1, false], [2, false], [2, false], [0, true]]);
    assert.deepEqual(exercises.map(({ score }) => score), [1, 1, 0, 0]);
    assert.deepEqual(await result().then(({ scaled, passed, complete }) => ({ scaled, passed, complete })), { scaled: 0.5, passed: false, complete: true });
    // And from the result back to any exercise, and from the start.
    await press('Once more from the start');
    assert.equal(await held(), 'title');
  });

  // The button pressed is not there any more: the focus fell to the page.
  it('to the sheet, the key and back the focus stays in the drill', async () => {
    await begin('kind="card" level="1" count="2" seed="4711"');
    for (const label of ['Sheet for paper', 'Answer key', 'Back to the exercises']) {
      await press(label);
      assert.notEqual(await held(), '', label);
    }
  });
});
