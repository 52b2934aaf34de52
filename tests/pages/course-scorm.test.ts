import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { newPage, openBrowser, openPage } from './browser.js';
import { drillReady, solveByKeyboard } from './solve-by-keyboard.js';
import { serveCourse, unpackCourse } from './unpacked-course.js';
import type { Served, UnpackedCourse } from './unpacked-course.js';

/**
 * The packages in the frame of a real run-time. Expected values: SCORM 1.2 Run-Time Environment
 * 3.4 and SCORM 2004 4th edition Run-Time Environment 4.2 (section numbers from memory).
 */
const LESSON = 'demo/course/earths-field.html';

/** A page as platforms have: the run-time outside, the lesson in a frame. */
const platformPage = (script: string, made: string, name: string, lesson = LESSON): string => `<!doctype html><title>Platform</title><link rel="icon" href="data:,">
<iframe id="lesson" width="1000" height="500" title="Lesson"></iframe>
<script type="module">
  import { ${made} } from '/run-time/${script}';
  const kept = JSON.parse(sessionStorage.getItem('kept') ?? 'null');
  const api = new ${made}({ autocommit: false, logLevel: 5 });
  if (kept) api.loadFromJSON(kept, 'cmi');
  window.${name} = api;
  document.querySelector('iframe').src = '/${lesson}';
</script>`;

interface Seen {
  readonly terminated: boolean;
  readonly values: Readonly<Record<string, string>>;
}

const pages = {
  '/12.html': platformPage('scorm12.js', 'Scorm12API', 'API'),
  '/2004.html': platformPage('scorm2004.js', 'Scorm2004API', 'API_1484_11'),
};

describe('a course package in the frame of a SCORM run-time', () => {
  let browser: Browser;
  let course: UnpackedCourse;
  let old: Served;
  let later: Served;

  before(async () => {
    course = unpackCourse();
    browser = await openBrowser();
    old = await serveCourse(course.folder('scorm-1.2'), pages);
    later = await serveCourse(course.folder('scorm-2004'), pages);
  });

  after(async () => {
    await browser.close();
    old.server.close();
    later.server.close();
    course.remove();
  });

  async function openLesson(address: string): Promise<{ page: Page; lesson: Frame; complaints: string[] }> {
    const { page, complaints } = await openPage(browser, address);
    const lesson = await page.waitForFrame((frame) => frame.url().endsWith(LESSON));
    await drillReady(lesson);
    return { page, lesson, complaints: complaints.list };
  }

  /** What the run-time holds, read as its server would. */
  const seen = (page: Page, name: 'API' | 'API_1484_11', elements: readonly string[]): Promise<Seen> =>
    page.evaluate(
      (api, asked) => {
        const runTime = (window as unknown as Record<string, { isTerminated(): boolean; cmi: Record<string, unknown> }>)[api];
        if (!runTime) throw new Error('no run-time');
        const values = asked.map((path) => [
          path,
          String(path.split('.').reduce<unknown>((at, part) => (at as Record<string, unknown>)[part], runTime.cmi)),
        ]);
        return { terminated: runTime.isTerminated(), values: Object.fromEntries(values) as Record<string, string> };
      },
      name,
      [...elements],
    );

  type RunTime = Record<string, { isTerminated(): boolean } | undefined>;
  const ended = (page: Page, name: 'API' | 'API_1484_11'): Promise<unknown> =>
    page.waitForFunction((api) => (window as unknown as RunTime)[api]?.isTerminated(), {}, name);

  const leave = async (page: Page, name: 'API' | 'API_1484_11'): Promise<void> => {
    await page.$eval('iframe', (frame) => frame.remove());
    await ended(page, name);
  };

  const status = (lesson: Frame, wanted: string): Promise<unknown> =>
    lesson.waitForFunction((text) => document.querySelector<HTMLElement>('[data-lubber-lms]')?.dataset['status'] === text, {}, wanted);

  it('SCORM 1.2: solved by keyboard, the platform has the score, and passed', async () => {
    const { page, lesson, complaints } = await openLesson(`${old.address}12.html`);
    await status(lesson, 'open');
    for (let count = 0; count < 3; count += 1) await solveByKeyboard(page, lesson);
    await leave(page, 'API');
    const { terminated, values } = await seen(page, 'API', ['core.score.raw', 'core.lesson_status', 'interactions.childArray.length']);
    assert.deepEqual(values, { 'core.score.raw': '100', 'core.lesson_status': 'passed', 'interactions.childArray.length': '3' });
    assert.equal(terminated, true);
    assert.deepEqual(complaints, []);
    await page.close();
  });

  it('SCORM 1.2: left after one of three, it goes on with the second', async () => {
    const { page, lesson } = await openLesson(`${old.address}12.html`);
    await solveByKeyboard(page, lesson);
    await leave(page, 'API');
    const first = await seen(page, 'API', ['core.score.raw', 'core.lesson_status', 'suspend_data']);
    assert.equal(first.values['core.score.raw'], '33.33');
    assert.equal(first.values['core.lesson_status'], 'incomplete');
    await page.evaluate((data) => sessionStorage.setItem('kept', JSON.stringify({ suspend_data: data, core: { lesson_status: 'incomplete' } })), first.values['suspend_data']);
    await page.reload({ waitUntil: 'load' });
    const again = await page.waitForFrame((frame) => frame.url().endsWith(LESSON));
    await drillReady(again);
    assert.equal(await again.evaluate(() => (document.querySelector('lubber-drill') as unknown as { state: { at: number } }).state.at), 1);
    await solveByKeyboard(page, again);
    await solveByKeyboard(page, again);
    await leave(page, 'API');
    const { values } = await seen(page, 'API', ['core.score.raw', 'core.lesson_status']);
    assert.deepEqual(values, { 'core.score.raw': '100', 'core.lesson_status': 'passed' });
    await page.close();
  });

  it('SCORM 2004: solved by keyboard, the platform has score, success and completion', async () => {
    const { page, lesson, complaints } = await openLesson(`${later.address}2004.html`);
    await solveByKeyboard(page, lesson, 20);
    await solveByKeyboard(page, lesson);
    await solveByKeyboard(page, lesson);
    await leave(page, 'API_1484_11');
    const { terminated, values } = await seen(page, 'API_1484_11', ['score.scaled', 'score.raw', 'success_status', 'completion_status']);
    // Two right of three: 0.6667, and the course passes at 0.66.
    assert.deepEqual(values, { 'score.scaled': '0.6667', 'score.raw': '66.67', success_status: 'passed', completion_status: 'completed' });
    assert.equal(terminated, true);
    assert.deepEqual(complaints, []);
    await page.close();
  });

  it('SCORM 2004: a frame that goes to another page has saved and ended its session', async () => {
    const { page, lesson } = await openLesson(`${later.address}2004.html`);
    await solveByKeyboard(page, lesson);
    await page.$eval('iframe', (frame) => (frame.src = 'about:blank'));
    await ended(page, 'API_1484_11');
    const { terminated, values } = await seen(page, 'API_1484_11', ['score.scaled', 'completion_status']);
    assert.deepEqual(values, { 'score.scaled': '0.3333', completion_status: 'incomplete' });
    assert.equal(terminated, true);
    await page.close();
  });

  it('in a frame of a platform of another origin it works on and says that nothing is reported', async () => {
    const outside = await serveCourse(course.folder('cmi5'), {
      '/outside.html': `<!doctype html><title>Platform</title><link rel="icon" href="data:,"><script>window.API = {};</script><iframe width="1000" height="500" title="Lesson" src="${old.address}${LESSON}"></iframe>`,
    });
    const { page, lesson, complaints } = await openLesson(`${outside.address}outside.html`);
    await status(lesson, 'none');
    await solveByKeyboard(page, lesson);
    assert.deepEqual(complaints, []);
    await page.close();
    outside.server.close();
  });

  for (const name of ['index.html', 'earths-field.html', 'amplitude.html', 'swinging-ship.html']) {
    it(`${name} opens from a folder, without platform and without a request`, async () => {
      const page = await newPage(browser);
      const asked: string[] = [];
      const broken: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      page.on('pageerror', (error) => broken.push(String(error)));
      await page.goto(`file://${course.folder('scorm-1.2')}/demo/course/${name}`, { waitUntil: 'load' });
      assert.deepEqual(asked.filter((url) => !url.startsWith('file:')), []);
      assert.deepEqual(broken, []);
      const undefinedTags = await page.evaluate(() => document.querySelectorAll(':not(:defined)').length);
      assert.equal(undefinedTags, 0);
      if (name !== 'index.html') assert.match(await page.$eval('[data-lubber-lms]', (line) => line.textContent ?? ''), /nothing is reported/);
      await page.close();
    });
  }
});
