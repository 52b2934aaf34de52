import { sendKeys } from '@web/test-runner-commands';
import type { LubberSwing } from '../../../components/swing/swing.js';

export const root = (element: LubberSwing): ShadowRoot => element.shadowRoot as ShadowRoot;
export const flat = (node: Element | null | undefined): string => (node?.textContent ?? '').replace(/\s+/g, ' ').trim();
export const text = (element: LubberSwing): string => flat(root(element).querySelector('.frame'));
export const headline = (element: LubberSwing): string => flat(root(element).querySelector('.headline'));
export const cautions = (element: LubberSwing): string => flat(root(element).querySelector('.cautions'));
export const problem = (element: LubberSwing, row: number): string => flat(root(element).querySelector(`#problem-${row}`));

export function cell(element: LubberSwing, id: string): HTMLInputElement {
  const found = root(element).querySelector<HTMLInputElement>(`#${id}`);
  if (!found) throw new Error(`no cell ${id}`);
  return found;
}

export const column = (element: LubberSwing, name: string): string[] =>
  [...root(element).querySelectorAll<HTMLInputElement>(`td.${name} input`)].map(({ value }) => value);

/** The id of the cell the caret is in. */
export const where = (element: LubberSwing): string => root(element).activeElement?.id ?? '';

export async function settled(element: LubberSwing): Promise<void> {
  await element.updateComplete;
  await new Promise((resolve) => setTimeout(resolve, 0));
  await element.updateComplete;
}

export async function press(element: LubberSwing, key: string): Promise<void> {
  const keys = key.split('+');
  const last = keys.pop() ?? '';
  for (const held of keys) await sendKeys({ down: held });
  await sendKeys({ press: last });
  for (const held of keys) await sendKeys({ up: held });
  await settled(element);
}

export async function type(element: LubberSwing, typed: string): Promise<void> {
  await sendKeys({ type: typed });
  await settled(element);
}

/** A paste as the browser reports it: the clipboard itself is not open to a test. */
export async function paste(element: LubberSwing, id: string, pasted: string): Promise<boolean> {
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', pasted);
  const target = cell(element, id);
  target.focus();
  const event = new ClipboardEvent('paste', { bubbles: true, cancelable: true, composed: true });
  // Firefox lets nobody read the data of an event that a page has made.
  Object.defineProperty(event, 'clipboardData', { value: clipboardData });
  target.dispatchEvent(event);
  await settled(element);
  return event.defaultPrevented;
}

/** A row of the table of coefficients: least squares, eight points. */
export function coefficient(element: LubberSwing, name: string): string[] {
  const row = [...root(element).querySelectorAll('table.coefficients tbody tr')].find((one) => flat(one).startsWith(name));
  return [...(row?.querySelectorAll('td') ?? [])].map(flat);
}
