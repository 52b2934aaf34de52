import { fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import '../../../components/iron/define.js';
import type { LubberIron } from '../../../components/iron/iron.js';

export const root = (element: LubberIron): ShadowRoot => element.shadowRoot as ShadowRoot;

export function one<T extends HTMLElement>(element: LubberIron, selector: string): T {
  const found = root(element).querySelector<T>(selector);
  if (!found) throw new Error(`nothing at ${selector}`);
  return found;
}

export const textOf = (element: Element | null): string => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
export const text = (element: LubberIron): string => textOf(one(element, '.frame'));
export const headline = (element: LubberIron): string => textOf(one(element, '.headline'));
export const explanation = (element: LubberIron): string => textOf(one(element, '.explanation'));
export const problem = (element: LubberIron, name: string): string => textOf(root(element).querySelector(`#${name}-problem`));

/** A bench with a state of the host's: nothing else on it. */
export async function bench(state: Record<string, string | number> | string = 'heading=090'): Promise<LubberIron> {
  const element = await fixture<LubberIron>(html`<lubber-iron .state=${state}></lubber-iron>`);
  await element.updateComplete;
  return element;
}

/** Types into a field with real keys and leaves it. */
export async function type(element: LubberIron, name: string, typed: string): Promise<void> {
  const field = one<HTMLInputElement>(element, `#${name}`);
  field.focus();
  field.select();
  await sendKeys({ type: typed });
  await sendKeys({ press: 'Tab' });
  await element.updateComplete;
}

/** Goes to a station by the arrow keys of the tab list. */
export async function goTo(element: LubberIron, view: string): Promise<void> {
  one(element, '[role=tab][aria-selected=true]').focus();
  for (let step = 0; step < 8 && (root(element).activeElement as HTMLElement).id !== `tab-${view}`; step += 1) {
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
  }
}

/** Presses the button with this text by the keyboard. */
export async function press(element: LubberIron, name: string): Promise<void> {
  button(element, name).focus();
  await sendKeys({ press: 'Enter' });
  await element.updateComplete;
}

export function button(element: LubberIron, name: string): HTMLButtonElement {
  const found = [...root(element).querySelectorAll('button')].find((each) => textOf(each) === name);
  if (!found) throw new Error(`no button ${name}`);
  return found;
}

/** Clicks with the pointer on a part of what is shown; `along` from 0 at the left to 1 at the right. */
export async function click(element: LubberIron, target: HTMLElement, along = 0.5): Promise<void> {
  target.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = target.getBoundingClientRect();
  await sendMouse({ type: 'click', position: [Math.round(left + along * width), Math.round(top + height / 2)] });
  await element.updateComplete;
}
