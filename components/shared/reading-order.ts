import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/**
 * Fields and headline in the order they are read: where the widget is one column the answer
 * stands above the fields, and what can be pressed in it is reached before them. The fields stay
 * where they are, and so does the focus in them, when the widget grows or shrinks.
 */
export function inReadingOrder(host: LubberElement, fields: TemplateResult, headline: TemplateResult, oneColumn = host.width.narrow): TemplateResult {
  return html`${oneColumn ? headline : nothing}${fields}${oneColumn ? nothing : headline}`;
}
