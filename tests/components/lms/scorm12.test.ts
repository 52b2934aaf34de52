import { expect } from '@open-wc/testing';
import { Scorm12API } from './run-times.js';
import { connectScorm } from '../../../components/lms/scorm.js';
import type { LmsConnection } from '../../../components/lms/connection.js';
import { answer, drillOfTwo, lessonFrame, solution, soon } from './lesson-of-drills.js';
import { until } from '../../support/until.js';

/**
 * Against scorm-again as run-time. Expected values: SCORM 1.2 Run-Time Environment (ADL, October
 * 2001), section 3.4, the data model; section numbers from memory.
 */
const host = window as unknown as { API?: Scorm12API };

let connections: LmsConnection[] = [];

function runTime(): Scorm12API {
  const api = new Scorm12API({ autocommit: false, logLevel: 5 });
  host.API = api;
  return api;
}

async function lesson(seed?: string) {
  const drill = await drillOfTwo(seed);
  const { frame, view } = lessonFrame();
  const statuses: string[] = [];
  const connection = connectScorm(drill, { window: view, onStatus: (status) => statuses.push(status) });
  connections.push(connection);
  return { drill, frame, view, connection, statuses };
}

afterEach(() => {
  for (const connection of connections) connection.finish();
  connections = [];
  for (const frame of document.querySelectorAll('iframe')) frame.remove();
  delete host.API;
});

describe('a lesson on a SCORM 1.2 platform', () => {
  it('is incomplete as soon as it is opened, so that closing it does not count as completed', async () => {
    const api = runTime();
    const { connection, frame } = await lesson();
    expect(connection.kind).to.equal('scorm-1.2');
    expect(connection.status).to.equal('open');
    expect(api.cmi.core.lesson_status).to.equal('incomplete');
    frame.remove();
    await soon();
    expect(api.cmi.core.lesson_status).to.equal('incomplete');
    expect(api.isTerminated()).to.equal(true);
  });

  it('has 50 of 100 after one of two, passed and 100 after both', async () => {
    const api = runTime();
    const { drill } = await lesson();
    await answer(drill);
    expect([api.cmi.core.score.raw, api.cmi.core.score.min, api.cmi.core.score.max]).to.deep.equal(['50', '0', '100']);
    expect(api.cmi.core.lesson_status).to.equal('incomplete');
    await answer(drill);
    expect(api.cmi.core.score.raw).to.equal('100');
    expect(api.cmi.core.lesson_status).to.equal('passed');
  });

  it('is failed when all is answered and too little is right', async () => {
    const api = runTime();
    const { drill } = await lesson();
    await answer(drill, 20);
    await answer(drill);
    expect(api.cmi.core.score.raw).to.equal('50');
    expect(api.cmi.core.lesson_status).to.equal('failed');
  });

  it('is judged by the mastery score of the platform where it has one', async () => {
    const api = runTime();
    api.cmi.student_data.mastery_score = '40';
    const { drill } = await lesson();
    await answer(drill, 20);
    await answer(drill);
    expect(api.cmi.core.lesson_status).to.equal('passed');
    // The lesson's own mark of 80 % stood there, and "not passed" beside it.
    expect(drill.shadowRoot?.textContent).to.match(/Passed:\s40\s% was needed/);
  });

  it('commits after every answer', async () => {
    const api = runTime();
    let commits = 0;
    api.on('LMSCommit', () => (commits += 1));
    const { drill } = await lesson();
    const opened = commits;
    await answer(drill);
    expect(commits).to.be.greaterThan(opened);
  });

  it('reports each answer as a number with what was expected, once', async () => {
    const api = runTime();
    const { drill } = await lesson();
    const expected = solution(drill);
    await answer(drill);
    const second = solution(drill);
    await answer(drill, 20);
    const { childArray } = api.cmi.interactions;
    expect(childArray.length).to.equal(2);
    const [right, wrong] = childArray.map((each) => JSON.parse(JSON.stringify(each)) as Record<string, unknown>);
    expect(right?.['type']).to.equal('numeric');
    expect(Number(right?.['student_response'])).to.be.closeTo(expected, 0.051);
    expect(right?.['result']).to.equal('correct');
    expect(Number(wrong?.['student_response'])).to.be.closeTo(second + 20, 0.051);
    expect(wrong?.['result']).to.equal('wrong');
    expect(String(right?.['id'])).to.match(/^[A-Za-z0-9._-]+$/);
  });

  it('goes on where the learner stopped, without reporting old answers again', async () => {
    const api = runTime();
    const exits: string[] = [];
    api.on('LMSSetValue.cmi.core.exit', (_element: string, value: string) => exits.push(value));
    const first = await lesson();
    await answer(first.drill);
    first.frame.remove();
    await soon();
    expect(exits.at(-1)).to.equal('suspend');
    const kept = api.cmi.suspend_data;
    expect(kept.length).to.be.within(1, 4096);

    const again = runTime();
    again.loadFromJSON({ suspend_data: kept, core: { lesson_status: 'incomplete', score: { raw: '50' }, entry: 'resume' } }, 'cmi');
    const { drill } = await lesson();
    expect(drill.state?.at).to.equal(1);
    expect(drill.result?.scaled).to.equal(0.5);
    await answer(drill);
    expect(again.cmi.core.score.raw).to.equal('100');
    expect(again.cmi.core.lesson_status).to.equal('passed');
    expect(again.cmi.interactions.childArray.length).to.equal(1);
  });

  it('never takes away what was passed before', async () => {
    const api = runTime();
    api.loadFromJSON({ core: { lesson_status: 'passed', score: { raw: '100' } } }, 'cmi');
    const { drill } = await lesson();
    expect(api.cmi.core.lesson_status).to.equal('passed');
    await answer(drill, 20);
    await answer(drill, 20);
    expect(api.cmi.core.lesson_status).to.equal('passed');
    expect(api.cmi.core.score.raw).to.equal('100');
  });

  it('reports nothing when it is opened for review', async () => {
    const api = runTime();
    api.loadFromJSON({ core: { lesson_status: 'failed', score: { raw: '50' }, lesson_mode: 'review' } }, 'cmi');
    const { drill, connection } = await lesson();
    expect(connection.status).to.equal('review');
    await answer(drill);
    await answer(drill);
    expect(api.cmi.core.lesson_status).to.equal('failed');
    expect(api.cmi.core.score.raw).to.equal('50');
  });

  it('suspends what is left half done, and ends as usual once all is answered', async () => {
    const api = runTime();
    const exits: string[] = [];
    api.on('LMSSetValue.cmi.core.exit', (_element: string, value: string) => exits.push(value));
    const { drill, frame } = await lesson();
    await answer(drill);
    expect(exits.at(-1)).to.equal('suspend');
    await answer(drill);
    frame.remove();
    await soon();
    expect(exits.at(-1)).to.equal('');
  });

  it('sends the time spent as HHHH:MM:SS', async () => {
    const api = runTime();
    const sent: string[] = [];
    api.on('LMSSetValue.cmi.core.session_time', (_element: string, value: string) => sent.push(value));
    const { drill } = await lesson();
    await answer(drill);
    expect(sent.length).to.be.greaterThan(0);
    // Less than an hour has gone by in any run of the tests.
    for (const value of sent) expect(value).to.match(/^0000:\d\d:\d\d$/);
  });

  it('saves and finishes once when its frame is removed', async () => {
    const api = runTime();
    const calls: string[] = [];
    for (const name of ['LMSCommit', 'LMSFinish']) api.on(name, () => calls.push(name));
    const { frame, connection } = await lesson();
    calls.length = 0;
    frame.remove();
    await soon();
    connection.finish();
    connection.finish();
    expect(calls.filter((name) => name === 'LMSFinish').length).to.equal(1);
    expect(calls[0]).to.equal('LMSCommit');
    expect(connection.status).to.equal('finished');
  });

  it('saves and finishes once when its frame goes to another page', async () => {
    const api = runTime();
    let finished = 0;
    api.on('LMSFinish', () => (finished += 1));
    const { drill, frame } = await lesson();
    await answer(drill);
    frame.srcdoc = '<p>Another page</p>';
    await until(() => finished > 0);
    await soon();
    expect(finished).to.equal(1);
    expect(api.isTerminated()).to.equal(true);
    expect(api.cmi.core.score.raw).to.equal('50');
  });

  it('saves, and does not finish, when the page is out of sight', async () => {
    const api = runTime();
    const { view } = await lesson();
    let commits = 0;
    api.on('LMSCommit', () => (commits += 1));
    Object.defineProperty(view.document, 'visibilityState', { value: 'hidden', configurable: true });
    view.document.dispatchEvent(new Event('visibilitychange'));
    expect(commits).to.equal(1);
    expect(api.isTerminated()).to.equal(false);
  });
});
