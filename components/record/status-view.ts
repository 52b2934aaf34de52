import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import type { RecordBook } from './record-book.js';

/** A number of things in words: none, one, or so many. */
export function counted(host: LubberElement, key: string, count: number): string {
  const exact = `${key}.${count}`;
  const words = host.t(exact);
  return words === exact ? host.t(key, { count }) : words;
}

function chainText(host: LubberElement, book: RecordBook): TemplateResult | typeof nothing {
  if (book.count === 0 || book.broken) return nothing;
  if (!book.verified) return html`<span class="small soft">${host.t('record.chain.checking')}</span>`;
  const hash = (book.last?.hash ?? '').slice(0, 12);
  return html`<span class="small soft">${host.t('record.chain.whole', { number: book.count, hash })}</span>`;
}

function lossView(host: LubberElement, book: RecordBook): TemplateResult | typeof nothing {
  if (!book.loss) return nothing;
  const { kind, ...values } = book.loss;
  return html`<div class="alarm" role="alert">
    ${host.t(`record.loss.${kind}`, values)}
    <div class="no-print"><button part="button" type="button" @click=${() => book.acknowledgeLoss()}>${host.t('record.loss.accept')}</button></div>
  </div>`;
}

/** Whether the browser may clear the book by itself; nothing where it does not say. */
function lastingView(host: LubberElement, { count, lasting }: RecordBook): TemplateResult | typeof nothing {
  if (count === 0 || lasting === null) return nothing;
  return html`<span class="small soft">${host.t(lasting ? 'record.lasting' : 'record.lasting.not')}</span>`;
}

/** Whether the book is kept, whole and exported: what is wrong first, and loud. */
export function statusView(host: LubberElement, book: RecordBook): TemplateResult {
  if (book.state === 'opening') return html`<p class="waiting">${host.t('record.state.opening')}</p>`;
  const alarm = (key: string, values = {}): TemplateResult => html`<div class="alarm" role="alert">${host.t(key, values)}</div>`;
  const { unexported } = book;
  return html`${book.state === 'open' ? nothing : alarm(`record.state.${book.state}`)}
    ${book.memoryReason ? alarm(`record.memory.${book.memoryReason}`) : nothing}
    ${book.broken ? alarm(`record.chain.${book.broken.reason}`, { number: book.broken.number }) : nothing}
    ${lossView(host, book)}
    <p class="status" part="status">
      <span class="count">${book.keeps === 'memory' && book.count > 0 ? host.t('record.count.memory', { count: book.count }) : counted(host, 'record.count', book.count)}</span>
      ${book.count > 0 ? html`<span class=${unexported > 0 ? 'loud' : 'soft'}>${counted(host, 'record.unexported', unexported)}</span>` : nothing}
      ${chainText(host, book)} ${lastingView(host, book)}
    </p>`;
}
