import type { TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { LubberElement } from './lubber-element.js';

/**
 * Fields and headline in the order they are read: where the widget is one column the answer
 * stands above the fields, and what can be pressed in it is reached before them.
 */
export function inReadingOrder(host: LubberElement, fields: TemplateResult, headline: TemplateResult, oneColumn = host.width.narrow): unknown {
  const parts = [
    { name: 'fields', content: fields },
    { name: 'headline', content: headline },
  ];
  return repeat(oneColumn ? parts.reverse() : parts, ({ name }) => name, ({ content }) => content);
}
