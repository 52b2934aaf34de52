import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { formatError } from './figures.js';

/**
 * What `formatError` writes, `3.2° E`, in two: in a column the letter has a place of its own, so
 * that decimals stand below each other. Without a letter that place holds a space: a text that
 * comes and goes is made anew each time, and costs more than all figures that change.
 */
export function errorParts(written: string): readonly [figure: string, letter: string] {
  const gap = written.indexOf(' ');
  return gap < 0 ? [written, ' '] : [written.slice(0, gap), written.slice(gap)];
}

/** An error, variation or deviation in a column. */
export function errorInColumn(degrees: number, decimals = 1): TemplateResult {
  const [figure, letter] = errorParts(formatError(degrees, decimals));
  return html`<bdi dir="ltr">${figure}<span class="letter">${letter}</span></bdi>`;
}
