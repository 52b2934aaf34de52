import assert from 'node:assert/strict';
import { after, afterEach, before, describe, it } from 'node:test';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { newPage, openBrowser } from './browser.js';
import { recordStore } from './record-store.js';
import type { Bag, RecordStoreOptions, TestStore } from './record-store.js';
import { drillReady, solveByKeyboard } from './solve-by-keyboard.js';
import { assertSession, verbOf } from './statement-rules.js';
import { until } from './until.js';
import { serveCourse, unpackCourse } from './unpacked-course.js';
import type { Served, UnpackedCourse } from './unpacked-course.js';

const actor = { objectType: 'Agent', account: { homePage: 'https://college.example', name: 'learner-7' } };
const registration = '4f2c1a76-52d1-4d0e-9b3a-1f0f5f3c7a10';
const activityId = 'https://college.example/launched/earths-field';

/** As a platform writes it (cmi5 10.2.1): session, publisher and the course for grouping. */
const contextTemplate = {
  contextActivities: { grouping: [{ objectType: 'Activity', id: 'https://college.example/compass-course/earths-field' }] },
  extensions: { 'https://w3id.org/xapi/cmi5/context/extensions/sessionid': 'session-31' },
};

const normal: Bag = { contextTemplate, launchMode: 'Normal', moveOn: 'CompletedAndPassed', masteryScore: 0.66, returnURL: 'https://college.example/back' };

describe('the cmi5 package, launched by a platform', () => {
  let browser: Browser;
  let course: UnpackedCourse;
  let web: Served;
  let store: TestStore | undefined;

  before(async () => {
    course = unpackCourse();
    web = await serveCourse(course.folder('cmi5'));
    browser = await openBrowser();
  });

  afterEach(() => {
    store?.server.closeAllConnections();
    store?.server.close();
  });

  after(async () => {
    await browser.close();
    web.server.close();
    course.remove();
  });

  async function launch(options: RecordStoreOptions, into?: { page: Page; store: TestStore }): Promise<{ page: Page; store: TestStore; lesson: Frame }> {
    const at = into?.store ?? (await recordStore(options));
    store = at;
    const page = into?.page ?? (await newPage(browser));
    // cmi5 8.1: the launch parameters of the address.
    const query = new URLSearchParams({ endpoint: `${at.address}xapi`, fetch: `${at.address}fetch`, actor: JSON.stringify(actor), registration, activityId });
    await page.goto(`${web.address}demo/course/earths-field.html?${query.toString()}`, { waitUntil: 'load' });
    await drillReady(page.mainFrame());
    return { page, store: at, lesson: page.mainFrame() };
  }

  const status = (page: Page, wanted: string): Promise<unknown> =>
    page.waitForFunction((text) => (document.querySelector('[data-lubber-lms]') as HTMLElement | null)?.dataset['status'] === text, {}, wanted);

  const terminated = (at: TestStore): boolean => at.statements.some((each) => verbOf(each) === 'terminated');

  /** What leaves with the page is on its way for as long as it takes; then for what would come behind it. */
  const leave = async (page: Page, at: TestStore): Promise<void> => {
    await page.goto('about:blank');
    await until('terminated', () => terminated(at));
    await new Promise((resolve) => setTimeout(resolve, 300));
  };

  const given = (launchData: Bag) => ({ actor, registration, activityId, launchData });

  it('solved by keyboard: initialized, answers, completed, passed, terminated, each by the rules', async () => {
    const { page, store: at, lesson } = await launch({ launchData: normal });
    await status(page, 'open');
    for (let count = 0; count < 3; count += 1) await solveByKeyboard(page, lesson);
    await leave(page, at);
    assert.deepEqual(at.statements.map(verbOf), ['initialized', 'answered', 'answered', 'answered', 'completed', 'passed', 'terminated']);
    assertSession(at.statements, given(normal));
    const passed = at.statements.find((each) => verbOf(each) === 'passed');
    assert.deepEqual((passed?.['result'] as Bag)['score'], { scaled: 1, raw: 100, min: 0, max: 100 });
    await page.close();
  });

  it('asks for the token by POST, once and without credentials, then for launch data and preferences, before it says anything', async () => {
    const { page, store: at } = await launch({ launchData: normal });
    await status(page, 'open');
    const calls = at.calls.map(({ method, path, query }) => `${method} ${path}${query.get('stateId') ? ` ${query.get('stateId') ?? ''}` : ''}`);
    // cmi5 8.2: token; 10.1: launch data; 11: preferences; 9.3.2: only then initialized.
    assert.deepEqual(calls.slice(0, 3), ['POST /fetch', 'GET /xapi/activities/state LMS.LaunchData', 'GET /xapi/agents/profile']);
    assert.ok(calls.indexOf('POST /xapi/statements') > 2);
    assert.equal(at.calls[0]?.headers.authorization, undefined);
    for (const { headers } of at.calls.slice(1)) {
      // xAPI part three 1.4.1, 4; cmi5 8.2.3.
      assert.equal(headers['x-experience-api-version'], '1.0.3');
      assert.match(headers.authorization ?? '', /^Basic /);
    }
    const data = at.calls[1]?.query;
    assert.deepEqual([data?.get('activityId'), data?.get('registration'), JSON.parse(data?.get('agent') ?? '{}')], [activityId, registration, actor]);
    for (const { headers, method, path } of at.calls) if (method !== 'GET' && path !== '/fetch') assert.match(headers['content-type'] ?? '', /^application\/json/);
    await page.close();
  });

  it('the learner is told the mastery score of the platform, not the lesson’s own mark', async () => {
    const { page, lesson } = await launch({ launchData: { ...normal, masteryScore: 0.9 } });
    await status(page, 'open');
    for (let count = 0; count < 3; count += 1) await solveByKeyboard(page, lesson);
    await page.waitForFunction(() => /Passed:\s90\s% was needed/.test(document.querySelector('lubber-drill')?.shadowRoot?.textContent ?? ''));
    await page.close();
  });

  it('two of three wrong: completed and failed', async () => {
    const { page, store: at, lesson } = await launch({ launchData: normal });
    await status(page, 'open');
    await solveByKeyboard(page, lesson, 20);
    await solveByKeyboard(page, lesson, 20);
    await solveByKeyboard(page, lesson);
    await leave(page, at);
    const verbs = at.statements.map(verbOf).filter((verb) => verb !== 'answered');
    assert.deepEqual(verbs, ['initialized', 'completed', 'failed', 'terminated']);
    assertSession(at.statements, given(normal));
    await page.close();
  });

  it('left after two right of three: passed with what there is, not completed; launched again, it goes on and passes no second time', async () => {
    const first = await launch({ launchData: normal });
    await status(first.page, 'open');
    await solveByKeyboard(first.page, first.lesson);
    await solveByKeyboard(first.page, first.lesson);
    await leave(first.page, first.store);
    assert.deepEqual(first.store.statements.map(verbOf).filter((verb) => verb !== 'answered'), ['initialized', 'passed', 'terminated']);
    assertSession(first.store.statements, given(normal));

    // The next launch has the store's documents of this one and another token.
    const kept = first.store.calls.filter(({ method, query }) => method === 'PUT' && query.get('stateId') !== 'LMS.LaunchData').at(-1);
    assert.ok(kept);
    first.store.server.closeAllConnections();
    first.store.server.close();
    const again = await recordStore({ launchData: normal });
    await fetch(`${again.address}xapi/activities/state?stateId=${kept.query.get('stateId') ?? ''}`, {
      method: 'PUT',
      body: kept.body,
      headers: { authorization: kept.headers.authorization ?? '', 'x-experience-api-version': '1.0.3' },
    });
    const second = await launch({ launchData: normal }, { page: first.page, store: again });
    await status(second.page, 'open');
    assert.equal(await second.lesson.evaluate(() => (document.querySelector('lubber-drill') as unknown as { state: { at: number } }).state.at), 2);
    await solveByKeyboard(second.page, second.lesson);
    await leave(second.page, again);
    assert.deepEqual(again.statements.map(verbOf), ['initialized', 'answered', 'completed', 'terminated']);
    assertSession(again.statements, given(normal));
    await second.page.close();
  });

  for (const launchMode of ['Browse', 'Review']) {
    it(`launched to ${launchMode.toLowerCase()}: initialized and terminated, nothing between (cmi5 10.2.2)`, async () => {
      const launchData = { ...normal, launchMode };
      const { page, store: at, lesson } = await launch({ launchData });
      await status(page, 'review');
      await solveByKeyboard(page, lesson);
      await leave(page, at);
      assert.deepEqual(at.statements.map(verbOf), ['initialized', 'terminated']);
      assertSession(at.statements, given(launchData));
      assert.equal(at.calls.filter(({ method }) => method === 'PUT').length, 0);
      await page.close();
    });
  }

  it('a platform that is busy gets everything in the end, in order', async () => {
    const { page, store: at, lesson } = await launch({ launchData: normal, busy: 2 });
    await status(page, 'trouble');
    await solveByKeyboard(page, lesson);
    await solveByKeyboard(page, lesson);
    await status(page, 'open');
    await leave(page, at);
    assert.deepEqual(at.statements.map(verbOf), ['initialized', 'answered', 'answered', 'passed', 'terminated']);
    assertSession(at.statements, given(normal));
    await page.close();
  });

  // While the platform was asked an answer was told before `initialized`, or to nobody.
  for (const held of ['LMS.LaunchData', 'lubberline.lesson']) {
    it(`a platform that is slow to give ${held} hears of an answer given meanwhile, after initialized`, async () => {
      const { page, store: at, lesson } = await launch({ launchData: normal, held });
      await until(held, () => at.calls.some(({ query }) => query.get('stateId') === held));
      await solveByKeyboard(page, lesson);
      assert.deepEqual(at.statements, []);
      at.release();
      await status(page, 'open');
      await solveByKeyboard(page, lesson);
      await solveByKeyboard(page, lesson);
      await leave(page, at);
      assert.deepEqual(at.statements.map(verbOf), ['initialized', 'answered', 'answered', 'answered', 'completed', 'passed', 'terminated']);
      assertSession(at.statements, given(normal));
      await page.close();
    });
  }

  // What had been typed until then was replaced by what was kept.
  it('a platform that is slow to give what it kept: what was typed meanwhile stands, and what was answered before counts', async () => {
    const first = await launch({ launchData: normal });
    await status(first.page, 'open');
    await solveByKeyboard(first.page, first.lesson);
    await leave(first.page, first.store);
    const kept = first.store.calls.filter(({ method, query }) => method === 'PUT' && query.get('stateId') === 'lubberline.lesson').at(-1);
    assert.ok(kept);
    first.store.server.closeAllConnections();
    first.store.server.close();
    const again = await recordStore({ launchData: normal, held: 'lubberline.lesson' });
    await fetch(`${again.address}xapi/activities/state?stateId=lubberline.lesson`, {
      method: 'PUT',
      body: kept.body,
      headers: { authorization: kept.headers.authorization ?? '', 'x-experience-api-version': '1.0.3' },
    });
    const { page, lesson } = await launch({ launchData: normal }, { page: first.page, store: again });
    await until('the lesson is asked for', () => again.calls.some(({ method, query }) => method === 'GET' && query.get('stateId') === 'lubberline.lesson'));
    // The third of the exercises, by its number.
    await lesson.evaluate(() => {
      const button = document.querySelector('lubber-drill')?.shadowRoot?.querySelectorAll<HTMLElement>('.progress button')[2];
      if (!button) throw new Error('no way to the third');
      button.click();
    });
    await page.waitForFunction(() => document.querySelector('lubber-drill')?.shadowRoot?.activeElement?.id === 'title');
    for (let step = 0; step < 60 && !(await lesson.evaluate(() => document.querySelector('lubber-drill')?.shadowRoot?.activeElement?.matches('.questions input'))); step += 1) await page.keyboard.press('Tab');
    await page.keyboard.type('7.5W');
    again.release();
    await status(page, 'open');
    const [at, scores, typed] = await lesson.evaluate(() => {
      const drill = document.querySelector('lubber-drill');
      const field = drill?.shadowRoot?.activeElement as HTMLInputElement | null;
      return [drill?.state?.at, drill?.state?.exercises.map(({ score }) => score), field?.value] as const;
    });
    assert.deepEqual([at, scores, typed], [2, [1, 0, 0], '7.5W']);
    await page.close();
  });

  // Left before the platform had said what it kept, a fresh lesson was written over it, and a session ended that had not begun.
  it('left before the platform has given what it kept, it writes nothing over it and says nothing', async () => {
    const { page, store: at } = await launch({ launchData: normal, held: 'lubberline.lesson' });
    await until('the lesson is asked for', () => at.calls.some(({ query }) => query.get('stateId') === 'lubberline.lesson'));
    await page.goto('about:blank');
    await new Promise((resolve) => setTimeout(resolve, 300));
    assert.deepEqual([at.statements, at.calls.filter(({ method }) => method === 'PUT')], [[], []]);
    await page.close();
  });

  it('reloaded, it does not ask for a token again and says nothing after terminated', async () => {
    const { page, store: at } = await launch({ launchData: normal });
    await status(page, 'open');
    await page.reload({ waitUntil: 'load' });
    await status(page, 'finished');
    await until('terminated', () => terminated(at));
    assert.deepEqual(at.statements.map(verbOf), ['initialized', 'terminated']);
    assert.equal(at.calls.filter(({ path }) => path === '/fetch').length, 1);
    await page.close();
  });

  it('a token that is gone: it works on and says that nothing is reported', async () => {
    const at = await recordStore({ launchData: normal });
    await fetch(`${at.address}fetch`, { method: 'POST' });
    const page = await newPage(browser);
    const { lesson } = await launch({ launchData: normal }, { page, store: at });
    await status(page, 'refused');
    await solveByKeyboard(page, lesson);
    assert.deepEqual(at.statements, []);
    await page.close();
  });

  it('leads back to the address the platform gave', async () => {
    const { page } = await launch({ launchData: normal });
    await status(page, 'open');
    await page.waitForFunction(() => !(document.querySelector('[data-lubber-return]') as HTMLElement).hidden);
    assert.equal(await page.$eval('[data-lubber-return]', (link) => (link as HTMLAnchorElement).href), 'https://college.example/back');
    assert.equal(await page.$eval('nav', (nav) => (nav as HTMLElement).hidden), true);
    await page.close();
  });
});
