import { expect } from '@open-wc/testing';
import { Cmi5Session } from '../../../components/lms/cmi5-session.js';
import type { LaunchData } from '../../../components/lms/cmi5-launch.js';
import type { RecordStore, Sent, Statement } from '../../../components/lms/record-store.js';
import { StatementQueue } from '../../../components/lms/statement-queue.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { must } from '../../support/in-widget.js';
import { answer, drillOfTwo } from './lesson-of-drills.js';

/**
 * What one sitting says, by the rules of cmi5 (AICC/ADL, June 2016), sections 9.3 to 9.6, numbers
 * from memory; the shape of a statement's context by xAPI 1.0.3, part two, 4.2.
 */
class Store {
  readonly calls: (readonly Statement[])[] = [];
  kept: unknown = null;
  answer: () => Promise<Sent> = () => Promise.resolve('taken');

  readonly readState = (): Promise<unknown> => Promise.resolve(this.kept);
  readonly writeState = (_id: string, document: unknown): Promise<Sent> => {
    this.kept = structuredClone(document);
    return Promise.resolve('taken');
  };
  readonly send = (statements: readonly Statement[]): Promise<Sent> => {
    this.calls.push(statements);
    return this.answer();
  };

  get verbs(): readonly string[] {
    return this.calls.flat().map((statement) => (statement['verb'] as { display: { en: string } }).display.en);
  }
}

const launch = { endpoint: 'https://a.example/', fetch: 'https://a.example/f', actor: { account: {} }, registration: 'r', activityId: 'https://a.example/l' };
const data: LaunchData = { contextTemplate: {}, launchMode: 'Normal', masteryScore: null, returnURL: null };

function sitting(store: Store, target: Element, given: LaunchData = data): Cmi5Session {
  return new Cmi5Session(store as unknown as RecordStore, launch, given, target, [], () => undefined);
}

/** Answers both exercises of a drill and tells the session after each, as its events would. */
async function answerBoth(drill: LubberDrill, session: Cmi5Session): Promise<void> {
  for (let at = 0; at < 2; at += 1) {
    await answer(drill);
    session.report(must(drill.result));
  }
}

const count = (verbs: readonly string[], verb: string): number => verbs.filter((each) => each === verb).length;

describe('a sitting of a cmi5 lesson', () => {
  it('says completed and passed once, however often its exercises are done again', async () => {
    const store = new Store();
    const drill = await drillOfTwo();
    const session = sitting(store, drill);
    await session.open();
    await answerBoth(drill, session);
    expect([count(store.verbs, 'completed'), count(store.verbs, 'passed')]).to.deep.equal([1, 1]);
    must(drill.shadowRoot?.querySelector<HTMLButtonElement>('#onward')).click();
    await drill.updateComplete;
    expect(drill.result?.complete ?? false).to.equal(false);
    await answerBoth(drill, session);
    expect(must(drill.result).complete).to.equal(true);
    session.finish();
    expect([count(store.verbs, 'completed'), count(store.verbs, 'passed')]).to.deep.equal([1, 1]);
    expect(store.verbs.at(-1)).to.equal('terminated');
  });

  it('names each statement by a random UUID of its own (RFC 9562, 5.4), and tells what was answered', async () => {
    const store = new Store();
    const drill = await drillOfTwo();
    const session = sitting(store, drill);
    await session.open();
    await answerBoth(drill, session);
    session.finish();
    const statements = store.calls.flat();
    for (const { id } of statements) expect(id).to.match(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(new Set(statements.map(({ id }) => id)).size).to.equal(statements.length);
    const results = statements.filter((_, at) => store.verbs[at] === 'answered').map((statement) => statement['result'] as { success: boolean; response: string });
    expect(results.map(({ success }) => success)).to.deep.equal([true, true]);
    // xAPI 1.0.3, part two, 2.4.5: what was given as a number, for `numeric`.
    for (const [at, { response }] of results.entries()) expect(Number(response)).to.be.closeTo(Number(must(drill.result).answers[at]?.expected), 0.06);
  });

  it('says neither again at a later one', async () => {
    const store = new Store();
    const first = await drillOfTwo();
    const before = sitting(store, first);
    await before.open();
    await answerBoth(first, before);
    before.finish();
    expect(store.kept).to.include({ completed: true, passed: true });
    store.calls.length = 0;
    const again = await drillOfTwo();
    const session = sitting(store, again);
    await session.open();
    expect(again.result?.complete).to.equal(true);
    session.finish();
    expect(store.verbs).to.deep.equal(['initialized', 'terminated']);
  });

  it('begins and ends without an exercise', async () => {
    const store = new Store();
    const session = sitting(store, document.createElement('section'));
    await session.open();
    session.finish();
    expect(store.verbs).to.deep.equal(['initialized', 'terminated']);
  });

  it('keeps a category that the platform gives as one activity, with its own behind it', async () => {
    const store = new Store();
    const given = { ...data, contextTemplate: { contextActivities: { category: { id: 'https://a.example/category' }, grouping: [{ id: 'https://a.example/g' }] } } };
    const drill = await drillOfTwo();
    const session = sitting(store, drill, given);
    await session.open();
    await answer(drill);
    session.report(must(drill.result));
    session.finish();
    const categories = store.calls.flat().map((statement) => {
      const { category, grouping } = (statement['context'] as { contextActivities: { category: readonly { id: string }[]; grouping: unknown } }).contextActivities;
      expect(grouping).to.deep.equal([{ id: 'https://a.example/g' }]);
      return category.map(({ id }) => id.split('/').at(-1));
    });
    // Only what cmi5 defines bears its category (9.6.2.1).
    expect(store.verbs).to.deep.equal(['initialized', 'answered', 'terminated']);
    expect(categories).to.deep.equal([['category', 'cmi5'], ['category'], ['category', 'cmi5']]);
  });

  it('gives an answer no empty list of categories where the platform has none', async () => {
    const store = new Store();
    const drill = await drillOfTwo();
    const session = sitting(store, drill);
    await session.open();
    await answer(drill);
    session.report(must(drill.result));
    const answered = store.calls.flat().find((_, at) => store.verbs[at] === 'answered');
    expect(must(answered)['context']).to.deep.equal({ registration: 'r', extensions: {} });
    session.finish();
  });
});

describe('statements on their way', () => {
  it('leave in one call and in order when the page goes, what waits before the last', async () => {
    const store = new Store();
    const queue = new StatementQueue(store as unknown as RecordStore, () => undefined);
    queue.hold();
    queue.add({ n: 1 }, { n: 2 });
    await queue.flush();
    expect(store.calls).to.deep.equal([]);
    queue.last({ n: 3 });
    expect(store.calls).to.deep.equal([[{ n: 1 }, { n: 2 }, { n: 3 }]]);
  });

  it('wait where the platform is busy and go first the next time', async () => {
    const store = new Store();
    const told: Sent[] = [];
    const queue = new StatementQueue(store as unknown as RecordStore, (sent) => told.push(sent));
    store.answer = () => Promise.resolve('again');
    queue.add({ n: 1 });
    await queue.flush();
    store.answer = () => Promise.resolve('taken');
    queue.add({ n: 2 });
    await queue.flush();
    expect(told).to.deep.equal(['again', 'taken']);
    expect(store.calls).to.deep.equal([[{ n: 1 }], [{ n: 1 }, { n: 2 }]]);
  });
});
