import assert from 'node:assert/strict';
import type { Frame, Page } from 'puppeteer-core';
import { exercisesOf } from '../../components/drill/drill-order.js';
import type { DrillState } from '../../components/drill/drill-state.js';
import { solve } from '../core/drill/solve.js';

const stateOf = (lesson: Frame): Promise<DrillState> =>
  lesson.evaluate(() => (document.querySelector('lubber-drill') as unknown as { state: DrillState }).state);

const focused = (lesson: Frame): Promise<string> =>
  lesson.evaluate(() => document.querySelector('lubber-drill')?.shadowRoot?.activeElement?.id ?? '');

/** Goes to a part of the drill by the Tab key alone. */
async function tabTo(page: Page, lesson: Frame, id: string): Promise<void> {
  for (let step = 0; step < 250 && (await focused(lesson)) !== id; step += 1) await page.keyboard.press('Tab');
  assert.equal(await focused(lesson), id, `the Tab key reaches ${id}`);
}

/** Answers the exercise the drill of a lesson stands at, with real keys, off by so many degrees, and goes on. */
export async function solveByKeyboard(page: Page, lesson: Frame, off = 0): Promise<void> {
  const state = await stateOf(lesson);
  const exercise = exercisesOf(state)[state.at];
  assert.ok(exercise, 'an exercise is open');
  // Worked out from what the page tells, by the arithmetic of the tests.
  const answers = solve(exercise);
  for (const { code, part } of exercise.asked) {
    if (part !== 'result') continue;
    const value = Number(answers[code]) + off;
    await tabTo(page, lesson, `answer-${code}`);
    await page.keyboard.type(`${Math.abs(value).toFixed(1)}${value < 0 ? 'W' : 'E'}`);
  }
  // A wrong answer leaves attempts; the test gives the same one again until there is none.
  for (let tries = 1; tries <= 4; tries += 1) {
    await page.keyboard.press('Enter');
    await lesson.waitForFunction(
      (at, most) => ((document.querySelector('lubber-drill') as unknown as { state: DrillState }).state.exercises[at]?.tries ?? 0) >= most,
      {},
      state.at,
      tries,
    );
    if ((await focused(lesson)) === 'onward') break;
  }
  await tabTo(page, lesson, 'onward');
  await page.keyboard.press('Enter');
  await lesson.waitForFunction((at) => (document.querySelector('lubber-drill') as unknown as { state: DrillState }).state.at !== at, {}, state.at);
}

export async function drillReady(lesson: Frame): Promise<void> {
  await lesson.waitForFunction(() => (document.querySelector('lubber-drill')?.shadowRoot?.querySelector('input') ?? null) !== null);
}
