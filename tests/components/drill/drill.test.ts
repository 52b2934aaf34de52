import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../../components/drill/define.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { exercisesOf } from '../../../components/drill/drill-order.js';
import type { ScoreDetail } from '../../../components/shared/score-event.js';
import type { Exercise } from '../../../core/drill/exercise.js';
import type { Question } from '../../../core/answer/question.js';
import { assertAccessible } from '../../support/axe.js';
import { solve } from '../../core/drill/solve.js';
import { must, root } from '../../support/in-widget.js';

const text = (element: LubberDrill): string => ((root(element).querySelector('.frame') as HTMLElement).textContent ?? '').replace(/\s+/g, ' ');
const status = (element: LubberDrill): string => (root(element).querySelector('[role=status]')?.textContent ?? '').replace(/\s+/g, ' ').trim();

function field(element: LubberDrill, code: string): HTMLInputElement {
  const found = root(element).querySelector<HTMLInputElement>(`#answer-${code}`);
  if (!found) throw new Error(`no field ${code}`);
  return found;
}

function button(element: LubberDrill, label: string): HTMLButtonElement {
  const found = [...root(element).querySelectorAll('button')].find((each) => each.textContent?.trim() === label);
  if (!found) throw new Error(`no button ${label}: ${text(element)}`);
  return found;
}

async function press(element: LubberDrill, label: string): Promise<void> {
  button(element, label).focus();
  await sendKeys({ press: 'Enter' });
  await element.updateComplete;
}

async function type(element: LubberDrill, code: string, typed: string): Promise<void> {
  const input = field(element, code);
  input.focus();
  input.select();
  await sendKeys({ type: typed });
  await element.updateComplete;
}

/** As an officer writes it: three figures, or a letter; coefficients with their sign. */
function written(question: Question, value: number | string | undefined): string {
  if (question.is === 'choice') return String(value);
  const number = Number(value);
  if (question.form === 'bearing') return (((number % 360) + 360) % 360).toFixed(1).padStart(5, '0');
  const size = Math.abs(number).toFixed(1);
  return question.form === 'signed' ? `${number < 0 ? '-' : '+'}${size}` : `${size}${number < 0 ? 'W' : 'E'}`;
}

const drill = (kind: string, count = 1, level = 1): Promise<LubberDrill> =>
  fixture<LubberDrill>(html`<lubber-drill kind=${kind} level=${level} count=${count} seed="4711"></lubber-drill>`);

const exercises = (element: LubberDrill): readonly Exercise[] => {
  const { state } = element;
  if (!state) throw new Error('no state');
  return exercisesOf(state);
};

const only = (element: LubberDrill): Exercise => exercises(element)[0] as Exercise;

/** The answer worked out from what the page tells, by arithmetic of the test's own. */
const solved = (element: LubberDrill, code: string): string => {
  const exercise = only(element);
  return written(exercise.asked.find((each) => each.code === code) as Question, solve(exercise)[code]);
};

function listen(element: LubberDrill): ScoreDetail[] {
  const heard: ScoreDetail[] = [];
  element.addEventListener('lubber-score', (event) => heard.push(event.detail));
  return heard;
}

afterEach(async () => {
  await resetMouse();
  await setViewport({ width: 800, height: 600 });
});

describe('a drill without attributes', () => {
  it('asks the first of five exercises of all kinds, and lets the learner choose', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill></lubber-drill>`);
    expect(element.state?.count).to.equal(5);
    expect(text(element)).to.contain('1 of 5, level 1');
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null|drill\./);
    const select = root(element).querySelector<HTMLSelectElement>('#setup-kind') as HTMLSelectElement;
    select.value = 'amplitude';
    select.dispatchEvent(new Event('change'));
    await press(element, 'Draw new exercises');
    expect(exercises(element).map(({ kind }) => kind)).to.deep.equal(Array(5).fill('amplitude'));
    await assertAccessible(element);
  });

  it('draws another set for another learner', async () => {
    const [one, other] = [await fixture<LubberDrill>(html`<lubber-drill></lubber-drill>`), await fixture<LubberDrill>(html`<lubber-drill></lubber-drill>`)];
    expect(one.state?.seed).not.to.equal(other.state?.seed);
  });
});

describe('an exercise solved by keyboard', () => {
  for (const kind of ['conversion', 'chart-variation', 'card', 'amplitude', 'azimuth', 'transit', 'latitude']) {
    it(`of ${kind}: the result alone, and Enter`, async () => {
      const element = await drill(kind);
      const heard = listen(element);
      const result = only(element).asked.find(({ part }) => part === 'result')?.code ?? '';
      await type(element, result, solved(element, result));
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(text(element)).to.contain('Right.');
      expect(heard).to.have.length(1);
      expect(heard[0]).to.include({ scaled: 1, passed: true, complete: true });
      expect(heard[0]?.answers[0]).to.include({ asked: result, correct: true, mistake: null });
      expect(status(element)).to.contain('Right.');
      await element.updateComplete;
      expect((root(element).activeElement as HTMLElement).id).to.equal('onward');
    });
  }

  it('of polarity: by the arrow keys between the options', async () => {
    const element = await drill('polarity');
    const exercise = only(element);
    const [question] = exercise.asked;
    const answer = String(solve(exercise)[question?.code ?? '']);
    const radios = [...root(element).querySelectorAll<HTMLInputElement>('input[type=radio]')];
    must(radios[0]).focus();
    await sendKeys({ press: ' ' });
    await element.updateComplete;
    for (let step = 0; step < radios.length && !radios.find(({ checked, value }) => checked && value === answer); step++) {
      await sendKeys({ press: 'ArrowDown' });
      await element.updateComplete;
    }
    await press(element, 'Mark it');
    expect(element.result?.scaled).to.equal(1);
  });

  it('of coefficients: five fields, a comma for the point', async () => {
    const element = await drill('coefficients', 1, 2);
    for (const { code } of only(element).asked) await type(element, code, solved(element, code).replace('.', ','));
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(element.result?.scaled).to.equal(1);
    expect(element.result?.answers).to.have.length(5);
  });
});

describe('an answer that is not right', () => {
  it('is told what it comes from, and leaves an attempt', async () => {
    const element = await drill('card');
    const heard = listen(element);
    const answer = solved(element, 'deviation');
    await type(element, 'deviation', answer.endsWith('W') ? answer.replace('W', 'E') : answer.replace('E', 'W'));
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(text(element)).to.contain('Not right. The size is right, the name is not: east and west are exchanged.');
    expect(text(element)).to.contain('One attempt left.');
    expect(status(element)).to.contain('east and west are exchanged');
    expect(heard[0]).to.include({ scaled: 0, passed: false, complete: false });
    expect(heard[0]?.answers[0]?.mistake).to.equal('sign');
    await assertAccessible(element);
    await type(element, 'deviation', '45E');
    expect(root(element).querySelector('.verdict')).to.equal(null);
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(text(element)).to.contain('No attempt is left.');
    expect(text(element)).to.contain('right:');
    expect(heard[1]).to.include({ scaled: 0, complete: true });
    await assertAccessible(element);
  });

  it('may be tried without end where the page says 0 attempts', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="1" seed="4711" attempts="0"></lubber-drill>`);
    for (let attempt = 0; attempt < 4; attempt++) {
      await type(element, 'deviation', '45E');
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
    }
    expect(element.state?.exercises[0]?.tries).to.equal(4);
    expect(element.result?.complete).to.equal(false);
  });

  const cases: readonly (readonly [string, string])[] = [
    ['3.2', 'Say which way: E or W.'],
    ['three', 'This was not understood.'],
    ['3.2.1E', 'There are two decimal marks in one number.'],
    ['3O', 'The letter O means east to some and west to others.'],
  ];
  for (const [typed, told] of cases) {
    it(`costs no attempt while it is "${typed}", and keeps the text`, async () => {
      const element = await drill('card');
      const heard = listen(element);
      await type(element, 'deviation', typed);
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(root(element).querySelector('#answer-deviation-problem')?.textContent).to.contain(told);
      expect(field(element, 'deviation').value).to.equal(typed);
      expect(field(element, 'deviation').getAttribute('aria-invalid')).to.equal('true');
      expect(element.state?.exercises[0]?.tries).to.equal(0);
      expect(heard).to.deep.equal([]);
    });
  }

  it('is asked for its sign where it is a coefficient', async () => {
    const element = await drill('latitude');
    const code = only(element).asked[0]?.code ?? '';
    await type(element, code, '4');
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(text(element)).to.contain('Say which: + or −.');
  });

  it('is asked for where it is missing', async () => {
    const element = await drill('conversion');
    await press(element, 'Mark it');
    expect(text(element)).to.contain('Answer first:');
    expect(element.state?.exercises[0]?.tries).to.equal(0);
  });
});

describe('help', () => {
  it('gives a hint without cost, and the answer for the price of the exercise', async () => {
    const element = await drill('amplitude', 2);
    const heard = listen(element);
    await press(element, 'Hint');
    expect(text(element)).to.contain('Amplitude from latitude and declination');
    expect(heard).to.deep.equal([]);
    await press(element, 'Show the answer');
    expect(text(element)).to.contain('right:');
    expect(text(element)).to.contain('Gyro error: true less gyro');
    expect(heard[0]).to.include({ scaled: 0, complete: false });
    await assertAccessible(element);
    await press(element, 'Next exercise');
    expect(element.state?.at).to.equal(1);
    expect((root(element).activeElement as HTMLElement).id).to.equal('title');
  });

  it('keeps answer, working and key back where the page says so', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="1" seed="4711" answer="hidden" attempts="1"></lubber-drill>`);
    expect(() => button(element, 'Show the answer')).to.throw();
    expect(() => button(element, 'Answer key')).to.throw();
    await type(element, 'deviation', '45E');
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(text(element)).to.contain('Not right.');
    expect(text(element)).not.to.contain('right:');
    expect(root(element).querySelector('[part=working]')).to.equal(null);
    element.view = 'key';
    await element.updateComplete;
    expect(root(element).querySelector('.key')).to.equal(null);
  });
});

describe('a set', () => {
  it('ends with its score and how each exercise went', async () => {
    const element = await drill('polarity', 3);
    for (let index = 0; index < 3; index++) {
      await press(element, 'Show the answer');
      await press(element, index < 2 ? 'Next exercise' : 'See the result');
    }
    expect(text(element)).to.contain('0 %');
    expect(text(element)).to.contain('Not passed: 80 % is needed.');
    expect(element.result).to.include({ scaled: 0, passed: false, complete: true });
    await assertAccessible(element);
    await press(element, 'Once more from the start');
    expect(element.state?.exercises.every(({ tries, shown }) => tries === 0 && !shown)).to.equal(true);
  });

  it('goes to any exercise by its number', async () => {
    const element = await drill('card', 4);
    const third = root(element).querySelectorAll<HTMLButtonElement>('.progress button')[2];
    must(third).focus();
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(text(element)).to.contain('3 of 4');
  });

  it('passes at the mark the page sets, as a part or a percentage', async () => {
    for (const mark of ['0.5', '50', '50 %']) {
      const element = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="2" seed="4711" pass-mark=${mark}></lubber-drill>`);
      await type(element, 'deviation', solved(element, 'deviation'));
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(element.result, mark).to.include({ scaled: 0.5, passed: true, complete: false });
    }
  });
});

describe('a learner who comes back', () => {
  it('goes on where the state says, though the seed was drawn', async () => {
    const first = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3"></lubber-drill>`);
    await type(first, 'deviation', solved(first, 'deviation'));
    await sendKeys({ press: 'Enter' });
    await first.updateComplete;
    await press(first, 'Next exercise');
    await type(first, 'deviation', '7W');
    const stored = JSON.parse(JSON.stringify(first.state)) as unknown;

    const second = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3" .state=${stored}></lubber-drill>`);
    expect(second.state).to.deep.equal(stored);
    expect(field(second, 'deviation').value).to.equal('7W');
    expect(second.result?.scaled).to.be.closeTo(1 / 3, 1e-9);
    expect(text(second)).to.contain('2 of 3');
  });

  it('goes on though the state was set before the tag was defined', async () => {
    const stored = { ...(await drill('card', 3)).state, at: 2 };
    // A clone from a template is upgraded only when it comes into the page.
    const template = document.createElement('template');
    template.innerHTML = '<lubber-drill kind="card" count="3" seed="4711"></lubber-drill>';
    const early = template.content.firstElementChild as LubberDrill;
    Object.assign(early, { state: stored });
    const holder = await fixture<HTMLElement>(html`<div></div>`);
    holder.append(early);
    await early.updateComplete;
    expect(text(early)).to.contain('3 of 3');
  });

  it('finds it in the browser under the key', async () => {
    localStorage.removeItem('lubber-drill:test');
    const first = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3" storage-key="test"></lubber-drill>`);
    await type(first, 'deviation', '7W');
    const second = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3" storage-key="test"></lubber-drill>`);
    expect(second.state?.seed).to.equal(first.state?.seed);
    expect(field(second, 'deviation').value).to.equal('7W');
    localStorage.removeItem('lubber-drill:test');
  });

  it('takes it up where the key comes late, unless the learner has begun; another key is another learner', async () => {
    for (const key of ['test', 'other']) localStorage.removeItem(`lubber-drill:${key}`);
    const first = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3" storage-key="test"></lubber-drill>`);
    await type(first, 'deviation', '7W');
    const late = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3"></lubber-drill>`);
    late.storageKey = 'test';
    await late.updateComplete;
    expect(field(late, 'deviation').value).to.equal('7W');
    late.storageKey = 'other';
    await late.updateComplete;
    expect(field(late, 'deviation').value).to.equal('');
    const begun = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="3"></lubber-drill>`);
    await type(begun, 'deviation', '3E');
    begun.storageKey = 'test';
    await begun.updateComplete;
    expect(field(begun, 'deviation').value).to.equal('3E');
    for (const key of ['test', 'other']) localStorage.removeItem(`lubber-drill:${key}`);
  });

  it('works on where the browser refuses to store', async () => {
    const { getItem, setItem } = Storage.prototype;
    const refuse = (): never => {
      throw new DOMException('refused', 'SecurityError');
    };
    Storage.prototype.getItem = refuse;
    Storage.prototype.setItem = refuse;
    try {
      const element = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="1" seed="4711" storage-key="test"></lubber-drill>`);
      await type(element, 'deviation', solved(element, 'deviation'));
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
      expect(element.result?.scaled).to.equal(1);
    } finally {
      Object.assign(Storage.prototype, { getItem, setItem });
    }
  });

  const foreign: readonly unknown[] = [null, 7, 'text', [], {}, { exercises: 3 }, { seed: '4711', kind: 'card', level: 1, count: 2, at: -3, seconds: 'x', exercises: [7, { texts: [], tries: -1, score: 9 }] }];
  for (const state of foreign) {
    it(`starts afresh from ${JSON.stringify(state)}`, async () => {
      const element = await fixture<LubberDrill>(html`<lubber-drill kind="card" level="1" count="2" seed="4711" .state=${state}></lubber-drill>`);
      expect(element.state?.at).to.equal(0);
      expect(text(element)).to.contain('1 of 2');
      expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
    });
  }
});

describe('the event of a drill', () => {
  it('is fired for nothing the page does', async () => {
    const element = await drill('card', 2);
    const heard = listen(element);
    element.seed = '12';
    await element.updateComplete;
    element.level = 3;
    await element.updateComplete;
    element.state = { ...(element.state as object), at: 1 };
    await element.updateComplete;
    element.view = 'sheet';
    await element.updateComplete;
    expect(heard).to.deep.equal([]);
  });

  it('leaves the shadow of whatever holds the drill, and is the only one', async () => {
    const holder = await fixture<HTMLElement>(html`<div><lubber-drill kind="card" count="1" seed="4711"></lubber-drill></div>`);
    const element = holder.querySelector('lubber-drill') as LubberDrill;
    const types: string[] = [];
    for (const type of ['lubber-score', 'lubber-result', 'lubber-record-request']) holder.addEventListener(type, () => types.push(type));
    await type(element, 'deviation', solved(element, 'deviation'));
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(types).to.deep.equal(['lubber-score']);
  });
});

describe('a sheet for paper', () => {
  it('has the exercises of the seed, and its key their answers', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill count="9" level="2" seed="4711" view="sheet"></lubber-drill>`);
    expect(root(element).querySelectorAll('.sheet article')).to.have.length(9);
    expect(text(element)).to.contain('Sheet 4711, level 2');
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null|drill\.|step\./);
    await assertAccessible(element);
    await press(element, 'Answer key');
    expect(text(element)).to.contain('Answer key');
    const keys = [...root(element).querySelectorAll('.key article')];
    exercises(element).forEach((exercise, index) => {
      const found = solve(exercise);
      const results = [...(keys[index]?.querySelectorAll('.result dd bdi') ?? [])].map((each) => Number.parseFloat(each.textContent?.replace('−', '-') ?? ''));
      const expected = exercise.asked.filter(({ part, is }) => part === 'result' && is === 'number').map(({ code }) => Number(found[code]));
      expected.forEach((value, at) => {
        const miss = Math.abs((results[at] ?? NaN) % 360) - Math.abs(exercise.kind === 'coefficients' || exercise.kind === 'latitude' ? value : ((value + 540) % 360) - 180);
        // Bearings stand in [0, 360), errors by size: the tolerance of the exercise at most.
        expect(Math.min(Math.abs(miss), Math.abs((results[at] ?? NaN) - ((value + 360) % 360))), exercise.id).to.be.lessThan(0.5);
      });
    });
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null|drill\.|step\./);
    await assertAccessible(element);
  });

  // A choice was printed as "Colour blue red", and nobody was told what to do with it.
  it('says of every choice how it is answered with a pencil', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="polarity" count="6" level="1" seed="4711" view="sheet"></lubber-drill>`);
    const asked = [...root(element).querySelectorAll('dl.blank > div')];
    expect(asked.length).to.equal(6);
    for (const line of asked) {
      expect(line.querySelector('dt')?.textContent).to.match(/^(Colour|The error is) \(ring one\)$/);
      expect(line.querySelectorAll('.option').length).to.equal(2);
    }
  });
});

/** A right answer as it is seen, in words: `3.2° W`. */
const inWords = (key: string): string => key.replace('°', ' degrees').replace(/ W$/, ' west').replace(/ E$/, ' east').replace(/\s+/g, ' ');

// It was there to be seen and nothing said of it: the keyboard is led past it, to the way on.
describe('the right answer to what was not', () => {
  const seen = (element: LubberDrill): string[] => [...root(element).querySelectorAll('.outcome .key bdi')].map((each) => inWords(each.textContent ?? ''));

  it('is spoken after the last attempt, behind the verdict', async () => {
    const element = await drill('card');
    for (const answer of ['45E', '46E']) {
      expect(status(element)).not.to.contain('The right answer');
      await type(element, 'deviation', answer);
      await sendKeys({ press: 'Enter' });
      await element.updateComplete;
    }
    const [key] = seen(element);
    expect(key).to.match(/^\d+\.\d degrees (east|west)$/);
    expect(status(element)).to.match(new RegExp(`Not right\\..* The right answer is ${key}\\. No attempt is left\\.$`));
  });

  it('is spoken where it is asked for, of each that was asked', async () => {
    const element = await drill('coefficients', 1, 2);
    await press(element, 'Show the answer');
    const keys = seen(element);
    expect(keys).to.have.length(5);
    for (const key of keys) expect(status(element)).to.contain(`The right answer is ${key}.`);
    expect(status(element).split('The right answer')).to.have.length(6);
    expect(status(element)).to.match(/ The answer is shown\.$/);
  });

  it('is not where the answer was right, nor where the page keeps it back', async () => {
    const right = await drill('card');
    await type(right, 'deviation', solved(right, 'deviation'));
    await sendKeys({ press: 'Enter' });
    await right.updateComplete;
    expect(status(right)).to.contain('Right.').and.not.contain('The right answer');
    const kept = await fixture<LubberDrill>(html`<lubber-drill kind="card" count="1" seed="4711" attempts="1" answer="hidden"></lubber-drill>`);
    await type(kept, 'deviation', '45E');
    await sendKeys({ press: 'Enter' });
    await kept.updateComplete;
    expect(status(kept)).to.contain('Not right.').and.not.contain('The right answer');
  });
});

describe('what is spoken at the end of a set', () => {
  // The score alone was reached, "0 %"; and the last verdict stood in the status line of the exercise after it, unanswered yet.
  it('is whether it will do, and of no exercise before', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="amplitude" level="1" count="2" seed="4711" pass-mark="0.66"></lubber-drill>`);
    for (const onward of ['Next exercise', 'See the result']) {
      await press(element, 'Show the answer');
      expect(status(element)).not.to.equal('');
      await press(element, onward);
    }
    const reached = (root(element) as ShadowRoot).activeElement?.textContent ?? '';
    expect(reached).to.contain('0 %');
    expect(reached).to.contain('66 %');
    expect(status(element)).to.equal('');
  });
});

describe('a narrow page', () => {
  // The line below the score stood upon the letters of the verdict.
  it('of 320 pixels leaves room between the line below the score and the verdict', async () => {
    await setViewport({ width: 320, height: 640 });
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="amplitude" count="2" seed="4711"></lubber-drill>`);
    for (const onward of ['Next exercise', 'See the result']) {
      await press(element, 'Show the answer');
      await press(element, onward);
    }
    const [score, verdict] = root(element).querySelectorAll('#summary > p');
    const apart = must(verdict).getBoundingClientRect().top - must(score).getBoundingClientRect().bottom;
    expect(apart).to.be.at.least(8);
  });

  for (const kind of ['card', 'azimuth', 'coefficients']) {
    it(`of 320 pixels holds an exercise of ${kind} and its working without scrolling sideways`, async () => {
      await setViewport({ width: 320, height: 640 });
      const element = await fixture<LubberDrill>(html`<lubber-drill kind=${kind} level="3" count="1" seed="4711" working="open"></lubber-drill>`);
      await press(element, 'Show the answer');
      expect(document.documentElement.scrollWidth).to.be.at.most(320);
      await assertAccessible(element);
      await press(element, 'Answer key');
      expect(document.documentElement.scrollWidth).to.be.at.most(320);
    });
  }
});
