import { sendKeys } from '@web/test-runner-commands';

type Widget = HTMLElement & { readonly updateComplete: Promise<unknown> };

export const root = (widget: Element): ShadowRoot => widget.shadowRoot as ShadowRoot;

/** What a test presses or goes to: with `?.` the press of a button that is not there would pass in silence. */
export function must<Found>(found: Found | null | undefined): Found {
  if (found === null || found === undefined) throw new Error('what the test presses or goes to is not there');
  return found;
}

/** The text of a piece of a widget, its white space as it is read. */
export const flat = (node: Element | null | undefined): string => (node?.textContent ?? '').replace(/\s+/g, ' ').trim();

/** The field of a property. */
export function input(widget: Element, name: string): HTMLInputElement {
  const found = root(widget).querySelector<HTMLInputElement>(`#${name}`);
  if (!found) throw new Error(`no field ${name}`);
  return found;
}

/** The answer, or what stands in its place. */
export const headline = (widget: Element): string => flat(root(widget).querySelector('.headline'));

/** What is said to be wrong with a field; empty where nothing is. */
export const problem = (widget: Element, name: string): string => flat(root(widget).querySelector(`#${name}-problem`));

/** Writes over a field by the keyboard and leaves it, as a user does. */
export async function type(widget: Widget, name: string, typed: string): Promise<void> {
  const field = input(widget, name);
  field.closest('details')?.setAttribute('open', '');
  field.focus();
  field.select();
  await sendKeys(typed === '' ? { press: 'Delete' } : { type: typed });
  await sendKeys({ press: 'Tab' });
  await widget.updateComplete;
}

/** Until a widget has been told of the width it has now and has drawn itself: an observer that begins later is told behind those it has, which draw in the next frame. */
export async function laidOut(...widgets: readonly Widget[]): Promise<void> {
  for (const widget of widgets) {
    await new Promise<void>((resolve) => {
      const observer = new ResizeObserver(() => {
        observer.disconnect();
        requestAnimationFrame(() => resolve());
      });
      observer.observe(widget);
    });
    await widget.updateComplete;
  }
}
