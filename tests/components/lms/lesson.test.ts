import { expect } from '@open-wc/testing';
import '../../../components/drill/define.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { lessonScore, lessonStates, resumeLesson } from '../../../components/lms/lesson.js';
import { connectCmi5 } from '../../../components/lms/cmi5.js';
import { readLaunch, readLaunchData } from '../../../components/lms/cmi5-launch.js';
import { answer } from './lesson-of-drills.js';

/** A part of the page, without waiting for a frame to be painted: a runner's page may be out of sight. */
function section(): Element {
  return document.body.appendChild(document.createElement('section'));
}

afterEach(() => {
  for (const each of document.querySelectorAll('section')) each.remove();
});

async function lessonOfTwo(): Promise<{ lesson: Element; first: LubberDrill; second: LubberDrill }> {
  const lesson = section();
  for (const [seed, count] of [['1', '2'], ['2', '1']] as const) {
    const drill = document.createElement('lubber-drill');
    for (const [name, value] of Object.entries({ kind: 'chart-variation', level: '1', count, seed, attempts: '1' })) drill.setAttribute(name, value);
    lesson.append(drill);
  }
  const [first, second] = [...lesson.querySelectorAll('lubber-drill')] as unknown as [LubberDrill, LubberDrill];
  await Promise.all([first.updateComplete, second.updateComplete]);
  return { lesson, first, second };
}

describe('a lesson of two drills', () => {
  it('has the mean of their scores, and is passed and complete when both are', async () => {
    const { lesson, first, second } = await lessonOfTwo();
    await answer(second);
    expect(lessonScore(lesson)).to.deep.include({ scaled: 0.5, passed: false, complete: false });
    await answer(first);
    expect(lessonScore(lesson)?.scaled).to.equal(0.75);
    await answer(first);
    expect(lessonScore(lesson)).to.deep.include({ scaled: 1, passed: true, complete: true });
  });

  it('names every answer differently', async () => {
    const { lesson, first, second } = await lessonOfTwo();
    await answer(first);
    await answer(second);
    const ids = lessonScore(lesson)?.answers.map(({ id }) => id) ?? [];
    expect(ids.length).to.equal(2);
    expect(new Set(ids).size).to.equal(2);
  });

  it('gives each drill its own state back', async () => {
    const before = await lessonOfTwo();
    await answer(before.first);
    const states = lessonStates(before.lesson);
    const after = await lessonOfTwo();
    resumeLesson(after.lesson, states);
    expect(after.first.state?.at).to.equal(1);
    expect(lessonScore(after.lesson)?.scaled).to.equal(0.25);
  });

  it('has no score where there is no drill', () => {
    expect(lessonScore(section())).to.equal(null);
  });
});

// cmi5 8.1: endpoint, fetch, actor, registration and activityId, all of them.
describe('a page without a complete cmi5 launch', () => {
  const whole = { endpoint: 'https://a.example/x', fetch: 'https://a.example/f', actor: '{"account":{}}', registration: 'r', activityId: 'https://a.example/l' };
  it('is launched with all five', () => expect(readLaunch(new URLSearchParams(whole).toString())?.endpoint).to.equal('https://a.example/x/'));
  for (const name of Object.keys(whole)) {
    it(`is not launched without ${name}`, () => expect(readLaunch(new URLSearchParams({ ...whole, [name]: '' }).toString())).to.equal(null));
  }
  for (const actor of ['no JSON', '[]', '7', 'null']) {
    it(`is not launched for the actor ${actor}`, () => expect(readLaunch(new URLSearchParams({ ...whole, actor }).toString())).to.equal(null));
  }
  it('has no platform', () => {
    const connection = connectCmi5(section());
    expect([connection.kind, connection.status]).to.deep.equal([null, 'none']);
  });
  for (const data of [null, 7, [], {}, { contextTemplate: 7 }]) {
    it(`takes no launch data from ${JSON.stringify(data)}`, () => expect(readLaunchData(data)).to.equal(null));
  }
  for (const masteryScore of [0, 0.5, 1]) {
    it(`takes a mastery score of ${masteryScore}, 0 and 1 within (cmi5 10.2)`, () => expect(readLaunchData({ contextTemplate: {}, masteryScore })?.masteryScore).to.equal(masteryScore));
  }
  it('takes what is odd in launch data for the usual', () => {
    const read = readLaunchData({ contextTemplate: {}, launchMode: 'Odd', masteryScore: 7, returnURL: 3 });
    expect(read).to.deep.equal({ contextTemplate: {}, launchMode: 'Normal', masteryScore: null, returnURL: null });
  });
});
