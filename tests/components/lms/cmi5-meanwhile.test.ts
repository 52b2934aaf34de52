import { expect } from '@open-wc/testing';
import '../../../components/drill/define.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { connectCmi5 } from '../../../components/lms/cmi5.js';
import type { LmsConnection } from '../../../components/lms/connection.js';
import { lessonStates, resumeLesson } from '../../../components/lms/lesson.js';
import { packStates, unpackStates } from '../../../components/lms/pack-state.js';
import { must } from '../../support/in-widget.js';
import { until } from '../../support/until.js';
import { answer } from './lesson-of-drills.js';

async function lessonOf(...orders: Record<string, string>[]): Promise<{ lesson: Element; drills: LubberDrill[] }> {
  const lesson = document.body.appendChild(document.createElement('section'));
  for (const order of orders) {
    const drill = document.createElement('lubber-drill');
    for (const [name, value] of Object.entries({ kind: 'chart-variation', level: '1', count: '2', attempts: '1', ...order })) drill.setAttribute(name, value);
    lesson.append(drill);
  }
  const drills = [...lesson.querySelectorAll('lubber-drill')] as unknown as LubberDrill[];
  await Promise.all(drills.map((each) => each.updateComplete));
  return { lesson, drills };
}

/** A platform within the page: documents by name, and one that is not given away before `release`. */
class Platform {
  readonly documents = new Map<string, unknown>([['LMS.LaunchData', { contextTemplate: {}, launchMode: 'Normal' }]]);
  #released: Promise<void> = Promise.resolve();
  release = (): void => undefined;
  isAsked = false;

  hold(): void {
    this.isAsked = false;
    this.#released = new Promise((resolve) => (this.release = resolve));
  }

  readonly fetch = async (address: RequestInfo | URL, { method = 'GET', body }: RequestInit = {}): Promise<Response> => {
    const { pathname, searchParams } = new URL(String(address));
    const id = searchParams.get('stateId') ?? '';
    if (pathname === '/token') return new Response('{"auth-token":"dA=="}');
    if (!id) return new Response(pathname.endsWith('statements') ? '[]' : '{}');
    if (method === 'PUT') this.documents.set(id, JSON.parse(body as string));
    if (method === 'PUT') return new Response(null, { status: 204 });
    if (id === 'lubberline.lesson') {
      this.isAsked = true;
      await this.#released;
    }
    return this.documents.has(id) ? new Response(JSON.stringify(this.documents.get(id))) : new Response('', { status: 404 });
  };
}

let launches = 0;

/** One learner's launch of one lesson; the address of the token is another each time (cmi5 8.1.2). */
function launched(registration = 'r-1'): Window {
  launches += 1;
  const query = { endpoint: 'https://platform.example/xapi/', fetch: `https://platform.example/token?${launches}`, actor: '{"account":{}}', registration, activityId: 'https://platform.example/a' };
  const page = { location: { search: `?${new URLSearchParams(query).toString()}` }, document, addEventListener: () => undefined, removeEventListener: () => undefined };
  return page as unknown as Window;
}

describe('drills without a seed, launched by a cmi5 platform', () => {
  const ownFetch = window.fetch;
  let platform: Platform;
  let connection: LmsConnection | undefined;

  beforeEach(() => {
    platform = new Platform();
    window.fetch = platform.fetch;
  });

  afterEach(() => {
    connection?.finish();
    window.fetch = ownFetch;
    for (const each of document.querySelectorAll('section')) each.remove();
  });

  // The page had drawn another set, and what was answered in it was lost to the one that was kept.
  it('ask what they asked before, and keep an answer given before the platform has said so', async () => {
    const first = await lessonOf({}, {});
    connection = connectCmi5(first.lesson, { window: launched() });
    await connection.ready;
    await answer(first.drills[0] as LubberDrill);
    await answer(first.drills[1] as LubberDrill);
    const seeds = first.drills.map(({ state }) => state?.seed);
    connection.finish();
    first.lesson.remove();
    expect(seeds[0]).to.match(/^\d{5}$/).and.not.equal(seeds[1]);

    platform.hold();
    const second = await lessonOf({}, {});
    connection = connectCmi5(second.lesson, { window: launched() });
    await until(() => platform.isAsked);
    const drill = second.drills[1] as LubberDrill;
    await drill.updateComplete;
    must(drill.shadowRoot?.querySelectorAll<HTMLButtonElement>('.progress button')[1]).click();
    await drill.updateComplete;
    await answer(drill);
    platform.release();
    await connection.ready;
    expect(second.drills.map(({ state }) => state?.seed)).to.deep.equal(seeds);
    expect(second.drills.map(({ state }) => state?.exercises.map(({ score }) => score))).to.deep.equal([[1, 0], [1, 1]]);
  });

  it('ask another learner something else', async () => {
    const seeds: unknown[] = [];
    for (const registration of ['r-1', 'r-2']) {
      const { lesson, drills } = await lessonOf({});
      connection = connectCmi5(lesson, { window: launched(registration) });
      await connection.ready;
      seeds.push(drills[0]?.state?.seed);
      connection.finish();
      lesson.remove();
      platform = new Platform();
      window.fetch = platform.fetch;
    }
    expect(seeds[0]).to.not.equal(seeds[1]);
  });

  it('leave alone a seed that the page gives, and a set that is begun', async () => {
    const { lesson, drills } = await lessonOf({ seed: '4711' }, {});
    await answer(drills[1] as LubberDrill);
    const begun = drills[1]?.state?.seed;
    connection = connectCmi5(lesson, { window: launched() });
    await connection.ready;
    expect(drills.map(({ state }) => state?.seed)).to.deep.equal(['4711', begun]);
  });
});

describe('a lesson in which one drill is of an unknown kind', () => {
  it('gives those behind it their own states back', async () => {
    const orders = [{}, { kind: 'sextant' }, {}] as const;
    const before = await lessonOf(...orders);
    await answer(before.drills[2] as LubberDrill);
    const kept = packStates(lessonStates(before.lesson), 4096) ?? '';
    const after = await lessonOf(...orders);
    resumeLesson(after.lesson, unpackStates(kept));
    const [first, , last] = after.drills.map(({ state }) => state);
    expect([first?.seed, last?.seed]).to.deep.equal([before.drills[0]?.state?.seed, before.drills[2]?.state?.seed]);
    expect([first?.exercises[0]?.score, last?.exercises[0]?.score]).to.deep.equal([0, 1]);
    for (const each of [before, after]) each.lesson.remove();
  });
});
