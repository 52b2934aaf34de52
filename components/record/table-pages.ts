import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { entryTable } from './entry-table.js';

interface Pages {
  /** How many newer entries precede the page. */
  readonly first: number;
  readonly size: number;
  readonly count: number;
  go(first: number): void;
}

/** The way through a long table, newest first. */
function pager(host: LubberElement, { first, size, count, go }: Pages): TemplateResult | typeof nothing {
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

/** The table of a book and where the reader is in it. */
interface PagedTable {
  readonly compass: MagneticCompass;
  readonly struck: ReadonlyMap<number, number> | undefined;
  /** The entry shown in full; 0 for none. */
  readonly shown: number;
  readonly first: number;
  readonly pageSize: number;
  /** All of it, oldest first, as on paper. */
  readonly whole: boolean;
  show(change: { readonly shown?: number; readonly first?: number }): void;
  correct(entry: RecordEntry): void;
}

/** The entries of a book: a page of them, newest first, and the way to the others; or the whole book for paper. */
export function pagedTable(host: LubberElement, { entries, count }: { readonly entries: readonly RecordEntry[]; readonly count: number }, table: PagedTable): TemplateResult {
  const { compass, struck = new Map<number, number>(), shown, pageSize, whole, show, correct } = table;
  const size = Math.max(1, Math.floor(pageSize) || 25);
  const first = Math.min(table.first, Math.max(0, count - 1));
  const from = whole ? 0 : Math.max(0, entries.length - first - size);
  const rows = entries.slice(from, whole ? entries.length : entries.length - first).map((entry, place) => ({ entry, before: entries[from + place - 1] ?? null }));
  const view = { compass, struck, shown, narrow: host.width.narrow && !whole, live: !whole, show: (number: number) => show({ shown: number }), correct };
  return html`${entryTable(host, whole ? rows : rows.reverse(), view)} ${whole ? nothing : pager(host, { first, size, count, go: (place) => show({ first: place }) })}`;
}
