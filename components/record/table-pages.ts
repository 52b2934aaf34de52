import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';

interface Pages {
  /** How many newer entries precede the page. */
  readonly first: number;
  readonly size: number;
  readonly count: number;
  go(first: number): void;
}

/** The way through a long table, newest first. */
export function pager(host: LubberElement, { first, size, count, go }: Pages): TemplateResult | typeof nothing {
  if (count <= size) return nothing;
  const oldest = Math.floor((count - 1) / size) * size;
  const button = (key: string, to: number, useless: boolean): TemplateResult =>
    html`<button part="button" type="button" ?disabled=${useless} @click=${() => go(to)}>${host.t(`record.page.${key}`)}</button>`;
  return html`<div class="pager no-print">
    ${button('newest', 0, first === 0)} ${button('newer', Math.max(0, first - size), first === 0)}
    <span class="soft">${host.t('record.page', { from: count - first, to: Math.max(1, count - first - size + 1), count })}</span>
    ${button('older', Math.min(oldest, first + size), first >= oldest)} ${button('oldest', oldest, first >= oldest)}
  </div>`;
}
