import { fixture, html } from '@open-wc/testing';
import '../../../components/drill/define.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { exercisesOf } from '../../../components/drill/drill-order.js';
import type { Exercise } from '../../../core/drill/exercise.js';
import { solve } from '../../core/drill/solve.js';
import { must } from '../../support/in-widget.js';

/** Two exercises with one number each; the answer is worked out by the arithmetic of the tests. */
export function drillOfTwo(seed = '4711'): Promise<LubberDrill> {
  return fixture<LubberDrill>(html`<lubber-drill kind="chart-variation" level="1" count="2" seed=${seed} attempts="1"></lubber-drill>`);
}

function current(drill: LubberDrill): Exercise {
  const { state } = drill;
  const exercise = state && exercisesOf(state)[state.at];
  if (!exercise) throw new Error('no exercise');
  return exercise;
}

const withLetter = (value: number): string => `${Math.abs(value).toFixed(1)}${value < 0 ? 'W' : 'E'}`;

/** The degrees expected of the exercise the drill stands at, east positive. */
export function solution(drill: LubberDrill): number {
  const exercise = current(drill);
  const result = exercise.asked.find(({ part }) => part === 'result');
  return Number(solve(exercise)[result?.code ?? '']);
}

/** Answers the exercise the drill stands at, off by so many degrees, and goes on. */
export async function answer(drill: LubberDrill, off = 0): Promise<void> {
  const root = drill.shadowRoot as ShadowRoot;
  const result = current(drill).asked.find(({ part }) => part === 'result');
  const input = root.querySelector<HTMLInputElement>(`#answer-${result?.code ?? ''}`);
  if (!input) throw new Error('no field');
  input.value = withLetter(solution(drill) + off);
  input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  input.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
  await drill.updateComplete;
  must(root.querySelector<HTMLButtonElement>('#check')).click();
  await drill.updateComplete;
  // Where there is one exercise only, the way on is to begin again.
  if ((drill.state?.count ?? 0) > 1) must(root.querySelector<HTMLButtonElement>('#onward')).click();
  await drill.updateComplete;
}

/** A frame of the same origin, whose window stands for that of the lesson. */
export function lessonFrame(): { frame: HTMLIFrameElement; view: Window } {
  const frame = document.createElement('iframe');
  document.body.append(frame);
  if (!frame.contentWindow) throw new Error('no window');
  return { frame, view: frame.contentWindow };
}

/** Lets events of a frame that has just gone arrive. */
export const soon = (milliseconds = 50): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
