import { css } from 'lit';

/** The book: a long table, a form above it, two small charts. */
export const recordStyles = css`
  .status { display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-6); align-items: baseline; margin: 0 0 var(--space-2); }
  .status .count { font-size: var(--figure); }
  .status .loud { color: var(--warn); font-weight: 600; }
  .alarm { border-inline-start: 3px solid var(--bad); background: var(--warn-paper); padding: var(--space-2) var(--space-3); margin: 0 0 var(--space-2); color: var(--ink); }
  .alarm button { margin-block-start: var(--space-1); }
  .told { margin: var(--space-2) 0; min-block-size: 1.45em; }
  .told.wrong { color: var(--bad); }
  /* By the labels: a button beside one reaches above it, on a bridge by half a line. */
  .form-grid { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr)); gap: 0 var(--space-6); align-items: baseline; padding-block: var(--space-2); }
  /* The line under a button beside a label would push its field below those of the row. */
  .form-grid .with-action > button { margin-block-end: -1px; }
  .wide { grid-column: 1 / -1; }
  .form-grid .field + .hint { margin-block: calc(-1 * var(--space-2)) var(--gap); }
  .book { inline-size: 100%; --cell: clamp(var(--space-2), 1.1vw, var(--space-3)); }
  .book th, .book td { vertical-align: baseline; }
  .book th.figure { white-space: nowrap; }
  .nowrap { white-space: nowrap; }
  .scroll + [part='transfer'] { margin-block-start: var(--space-3); }
  .scroll + .scroll { margin-block-start: var(--space-4); }
  .book tr.struck > td:not(.open) { text-decoration: line-through; color: var(--soft); }
  .book tr.struck > td .letter { text-decoration: line-through; }
  .book button.open { min-inline-size: max(2.4rem, var(--target)); padding: 0 var(--space-1); text-align: right; }
  .book .mark { display: block; color: var(--warn); font-size: var(--small); }
  .told.wrong::before, .book .mark::before { content: '▲ '; content: '▲ '/''; }
  .book .note { display: inline-block; inline-size: 100%; color: var(--soft); font-size: var(--small); text-decoration: none; }
  .narrow table, .close .book { font-size: var(--small); }
  .narrow .book { --cell: 0.3rem; }
  .narrow .book button.open { min-inline-size: var(--target); font-size: inherit; }
  @media screen and (max-width: 896px) {
    .book .spare { display: none; }
  }
  dl.particulars { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(8.2rem, 100%), 1fr)); gap: var(--space-1) var(--space-6); margin: var(--space-2) 0; }
  dl.particulars dt { color: var(--soft); font-size: var(--small); }
  dl.particulars dd { margin: 0; overflow-wrap: anywhere; }
  .charts { display: grid; grid-template-columns: 1fr 1fr; gap: 0 var(--space-9); margin-block-start: var(--space-2); }
  .narrow .charts { grid-template-columns: minmax(0, 1fr); }
  .charts figure { margin: 0; min-inline-size: 0; }
  .charts figcaption { font-size: var(--small); color: var(--soft); }
  .charts h4 { font-size: var(--medium); font-weight: 600; margin: var(--space-2) 0 var(--space-1); }
  .advice li small { display: block; color: var(--soft); font-size: var(--small); }
  .pager { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; margin-block: var(--space-2); }
  .pager .soft { margin-inline: var(--space-1); }
  hr { border: 0; border-block-start: 1px solid var(--line); margin-block: var(--space-4); }
  @media print {
    .book, .book .note, .book .mark { font-size: 8pt; }
    .charts { grid-template-columns: 1fr 1fr; }
    .book { --cell: 0.35rem; }
    .book th, .book td { padding-block: 0.08rem; }
    .book button.open { display: inline; border: 0; color: inherit; padding: 0; min-height: 0; text-decoration: none; font-size: inherit; }
    table:not(.book) { break-inside: avoid; }
  }
`;
