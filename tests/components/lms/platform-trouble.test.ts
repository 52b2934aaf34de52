import { expect } from '@open-wc/testing';
import { connectScorm } from '../../../components/lms/scorm.js';
import type { LmsConnection } from '../../../components/lms/connection.js';
import { answer, drillOfTwo, lessonFrame, soon } from './lesson-of-drills.js';

/** Run-times that misbehave, each as small as its fault. */
type Calls = Record<string, (...values: string[]) => unknown>;
const host = window as unknown as { API?: Calls };
const names = ['LMSInitialize', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSFinish', 'LMSGetLastError'];

const answering = (answered: (name: string, ...values: string[]) => unknown): Calls =>
  Object.fromEntries(names.map((name) => [name, (...values: string[]) => answered(name, ...values)]));

let connection: LmsConnection | undefined;

async function lesson(view: Window = lessonFrame().view) {
  const drill = await drillOfTwo();
  const statuses: string[] = [];
  connection = connectScorm(drill, { window: view, onStatus: (status) => statuses.push(status) });
  return { drill, statuses, connection };
}

afterEach(() => {
  connection?.finish();
  for (const frame of document.querySelectorAll('iframe')) frame.remove();
  delete host.API;
});

describe('a lesson without a platform, or with a bad one', () => {
  it('works on without one, and says so', async () => {
    const { drill, statuses, connection } = await lesson();
    expect(statuses).to.deep.equal(['none']);
    expect(connection.kind).to.equal(null);
    await answer(drill);
    await answer(drill);
    expect(drill.result?.scaled).to.equal(1);
    connection.finish();
  });

  it('works on where every call answers "false"', async () => {
    host.API = answering((name) => (name === 'LMSGetLastError' ? '101' : name === 'LMSGetValue' ? '' : 'false'));
    const { drill, statuses } = await lesson();
    expect(statuses).to.deep.equal(['refused']);
    await answer(drill);
    await answer(drill);
    expect(drill.result?.complete).to.equal(true);
  });

  it('works on where every call throws', async () => {
    host.API = answering(() => {
      throw new Error('the platform broke');
    });
    const { drill, statuses } = await lesson();
    expect(statuses).to.deep.equal(['refused']);
    await answer(drill);
    expect(drill.result?.scaled).to.equal(0.5);
  });

  it('says that a report was not taken, and that the next one was', async () => {
    let isAway = false;
    const kept: Record<string, string> = { 'cmi.core.lesson_status': 'not attempted', 'cmi.interactions._count': '0' };
    host.API = answering((name, element = '', value = '') => {
      if (name === 'LMSGetLastError') return '0';
      if (name === 'LMSGetValue') return kept[element] ?? '';
      if (isAway) return 'false';
      if (name === 'LMSSetValue') kept[element] = value;
      return 'true';
    });
    const { drill, statuses } = await lesson();
    isAway = true;
    await answer(drill);
    isAway = false;
    await answer(drill);
    expect(statuses).to.deep.equal(['open', 'trouble', 'open']);
    expect(kept['cmi.core.score.raw']).to.equal('100');
    expect(kept['cmi.core.lesson_status']).to.equal('passed');
  });

  it('goes on in a session that a frame around it has opened', async () => {
    const kept: Record<string, string> = { 'cmi.core.lesson_status': 'incomplete' };
    host.API = answering((name, element = '', value = '') => {
      if (name === 'LMSGetLastError') return '0';
      if (name === 'LMSGetValue') return kept[element] ?? '';
      if (name === 'LMSSetValue') kept[element] = value;
      return name === 'LMSInitialize' ? 'false' : 'true';
    });
    const { drill, connection } = await lesson();
    expect(connection.status).to.equal('open');
    await answer(drill);
    expect(kept['cmi.core.score.raw']).to.equal('50');
  });

  it('takes booleans for the words', async () => {
    host.API = answering((name) => (name === 'LMSGetValue' ? '' : name === 'LMSGetLastError' ? 0 : true));
    const { connection } = await lesson();
    expect(connection.status).to.equal('open');
  });

  it('stops at a parent of another origin', async () => {
    const asked: string[] = [];
    const stranger = new Proxy({} as Window, {
      get(_target, name) {
        asked.push(String(name));
        throw new DOMException('Blocked a frame', 'SecurityError');
      },
    });
    const view = { parent: stranger, opener: null, document, addEventListener: () => undefined } as unknown as Window;
    const { statuses } = await lesson(view);
    expect(statuses).to.deep.equal(['none']);
    expect(new Set(asked)).to.deep.equal(new Set(['document']));
  });

  it('finds a run-time in the window that opened it', async () => {
    host.API = answering((name) => (name === 'LMSGetValue' ? '' : name === 'LMSGetLastError' ? '0' : 'true'));
    const view = { opener: window, document, addEventListener: () => undefined, removeEventListener: () => undefined } as unknown as { parent?: unknown };
    view.parent = view;
    const { connection } = await lesson(view as unknown as Window);
    expect(connection.kind).to.equal('scorm-1.2');
  });

  it('is not asked twice for the end, however it comes', async () => {
    let finished = 0;
    host.API = answering((name) => {
      if (name === 'LMSFinish') finished += 1;
      return name === 'LMSGetValue' ? '' : name === 'LMSGetLastError' ? '0' : 'true';
    });
    const { frame, view } = lessonFrame();
    const { connection } = await lesson(view);
    connection.finish();
    frame.remove();
    await soon();
    connection.finish();
    expect(finished).to.equal(1);
  });
});
