import { expect, fixture, html } from '@open-wc/testing';
import { Scorm2004API } from './run-times.js';
import { connectScorm } from '../../../components/lms/scorm.js';
import type { LmsConnection } from '../../../components/lms/connection.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { answer, drillOfTwo, lessonFrame, solution, soon } from './lesson-of-drills.js';

/**
 * Against scorm-again as run-time. Expected values: SCORM 2004 4th edition Run-Time Environment
 * (ADL, 2009), section 4.2, the data model; section numbers from memory.
 */
const host = window as unknown as { API_1484_11?: Scorm2004API };

let connections: LmsConnection[] = [];

function runTime(): Scorm2004API {
  const api = new Scorm2004API({ autocommit: false, logLevel: 5 });
  host.API_1484_11 = api;
  return api;
}

async function lesson() {
  const drill = await drillOfTwo();
  const { frame, view } = lessonFrame();
  const connection = connectScorm(drill, { window: view });
  connections.push(connection);
  return { drill, frame, view, connection };
}

afterEach(() => {
  for (const connection of connections) connection.finish();
  connections = [];
  for (const frame of document.querySelectorAll('iframe')) frame.remove();
  delete host.API_1484_11;
});

describe('a lesson on a SCORM 2004 platform', () => {
  it('tells success and completion apart, scaled and raw', async () => {
    const api = runTime();
    const { drill, connection } = await lesson();
    expect(connection.kind).to.equal('scorm-2004');
    expect([api.cmi.completion_status, api.cmi.success_status]).to.deep.equal(['incomplete', 'unknown']);
    await answer(drill);
    expect([api.cmi.score.scaled, api.cmi.score.raw, api.cmi.completion_status, api.cmi.success_status]).to.deep.equal(['0.5', '50', 'incomplete', 'unknown']);
    await answer(drill);
    expect([api.cmi.score.scaled, api.cmi.score.raw, api.cmi.score.min, api.cmi.score.max]).to.deep.equal(['1', '100', '0', '100']);
    expect([api.cmi.completion_status, api.cmi.success_status]).to.deep.equal(['completed', 'passed']);
  });

  it('is completed and failed when all is answered and too little is right', async () => {
    const api = runTime();
    const { drill } = await lesson();
    await answer(drill, 20);
    await answer(drill, 20);
    expect([api.cmi.completion_status, api.cmi.success_status, api.cmi.score.scaled]).to.deep.equal(['completed', 'failed', '0']);
  });

  it('reports answers as numbers with the span that counts as right, and a time with .00Z', async () => {
    const api = runTime();
    const { drill } = await lesson();
    const expected = solution(drill);
    await answer(drill);
    const first = JSON.parse(JSON.stringify(api.cmi.interactions.childArray[0])) as Record<string, unknown>;
    expect(first['type']).to.equal('numeric');
    expect(Number(first['learner_response'])).to.be.closeTo(expected, 0.051);
    expect(first['result']).to.equal('correct');
    // Two figures of a second and only then a zone: what the strictest platform takes.
    expect(String(first['timestamp'])).to.match(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.00Z$/);
    const pattern = JSON.stringify(first['correct_responses']);
    const [, least, most] = /(-?[\d.]+)\[:\](-?[\d.]+)/.exec(pattern) ?? [];
    expect(expected).to.be.within(Number(least), Number(most));
    expect(Number(most)).to.be.greaterThan(Number(least));
  });

  // By hand: (½ + 1) / 2 = 0.75. RTE 4.2.22: where the platform has a mark it judges success by the scaled score.
  const marks: readonly [string, readonly [number, number], string | null, string][] = [
    ['each reached: passed', [0, 20], null, 'passed'],
    ['the higher one missed: failed, though the mean is the same', [20, 0], null, 'failed'],
    ['the mark of the platform replaces both, for the mean', [20, 0], '0.7', 'passed'],
  ];
  for (const [what, [whole, half], mark, success] of marks) {
    it(`of two drills with unlike marks, ${what}`, async () => {
      const api = runTime();
      if (mark !== null) api.cmi.scaled_passing_score = mark;
      const section = await fixture(html`<section>
        <lubber-drill kind="chart-variation" level="1" count="2" seed="1" attempts="1" pass-mark="1"></lubber-drill>
        <lubber-drill kind="chart-variation" level="1" count="2" seed="2" attempts="1" pass-mark="0.5"></lubber-drill>
      </section>`);
      const [first, second] = [...section.querySelectorAll('lubber-drill')] as [LubberDrill, LubberDrill];
      connections.push(connectScorm(section, { window: lessonFrame().view }));
      await answer(first);
      await answer(first, whole);
      await answer(second);
      expect([api.cmi.completion_status, api.cmi.score.scaled]).to.deep.equal(['incomplete', whole === 0 ? '0.75' : '0.5']);
      await answer(second, half);
      expect([api.cmi.completion_status, api.cmi.score.scaled, api.cmi.success_status]).to.deep.equal(['completed', '0.75', success]);
      // Each tells the learner the mark it is judged by.
      expect([first, second].map(({ shadowRoot }) => /(\d+).% (?:is|was) needed/.exec(shadowRoot?.textContent ?? '')?.[1])).to.deep.equal(mark === null ? ['100', '50'] : ['70', '70']);
    });
  }

  it('goes on where the learner stopped', async () => {
    const api = runTime();
    const first = await lesson();
    await answer(first.drill);
    first.frame.remove();
    await soon();
    const kept = api.cmi.suspend_data;
    expect(kept.length).to.be.within(1, 64000);

    const again = runTime();
    again.loadFromJSON({ suspend_data: kept, completion_status: 'incomplete', score: { raw: '50', scaled: '0.5' } }, 'cmi');
    const { drill } = await lesson();
    expect(drill.state?.at).to.equal(1);
    await answer(drill);
    expect([again.cmi.completion_status, again.cmi.success_status]).to.deep.equal(['completed', 'passed']);
  });

  it('sends the time as a duration, suspends while open and when done', async () => {
    const api = runTime();
    const sent: [string, string][] = [];
    const set = api.SetValue.bind(api);
    api.SetValue = (element: string, value: string): string => {
      sent.push([element, value]);
      return set(element, value);
    };
    const { drill, frame } = await lesson();
    await answer(drill);
    const last = (name: string): string | undefined => sent.filter(([element]) => element === name).at(-1)?.[1];
    expect(last('cmi.session_time')).to.match(/^PT\d+S$/);
    expect(last('cmi.exit')).to.equal('suspend');
    await answer(drill);
    frame.remove();
    await soon();
    // RTE 4.2.8: after `normal` the data of this session is not to be had when the lesson is opened again, and its standing would begin anew.
    expect(last('cmi.exit')).to.equal('suspend');
    expect(api.isTerminated()).to.equal(true);
  });

  it('has every value taken: no call leaves an error', async () => {
    const api = runTime();
    const refused: string[] = [];
    const set = api.SetValue.bind(api);
    api.SetValue = (element: string, value: string): string => {
      const answered = set(element, value);
      if (answered !== 'true') refused.push(`${element}=${value}: ${api.GetLastError()}`);
      return answered;
    };
    const { drill, frame } = await lesson();
    await answer(drill);
    await answer(drill, 20);
    frame.remove();
    await soon();
    expect(refused).to.deep.equal([]);
  });
});
