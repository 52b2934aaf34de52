import { css } from 'lit';

/** The book: a long table, a form above it, two small charts. */
export const recordStyles = css`
  .status { display: flex; flex-wrap: wrap; gap: 0.1rem 1.5rem; align-items: baseline; margin: 0 0 0.4rem; }
  .status .count { font-size: 1.06rem; }
  .status .loud { color: var(--warn); font-weight: 600; }
  .alarm { border-inline-start: 3px solid var(--bad); background: var(--warn-paper); padding: 0.4rem 0.75rem; margin: 0 0 0.5rem; color: var(--ink); }
  .alarm button { margin-block-start: 0.3rem; }
  .told { margin: 0.4rem 0; min-block-size: 1.45em; }
  .told.wrong { color: var(--bad); }
  .told.wrong::before { content: '▲ '; }
  .form-grid { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr)); gap: 0 1.5rem; align-items: start; padding-block: 0.5rem; }
  .form-grid .wide { grid-column: 1 / -1; }
  .book { inline-size: 100%; font-size: 0.88rem; }
  .book th, .book td { padding: 0.2rem clamp(0.35rem, 1.1vw, 0.8rem) 0.2rem 0; vertical-align: baseline; }
  .book th.figure, .book td.figure { white-space: nowrap; }
  .book .nowrap { white-space: nowrap; }
  .book tr.struck > td:not(.open) { text-decoration: line-through; color: var(--soft); }
  .book button.open { min-inline-size: 2.4rem; padding: 0 0.3rem; text-align: end; font-variant-numeric: inherit; }
  .book .mark { display: block; color: var(--warn); font-size: var(--small); }
  .book .mark::before { content: '▲ '; }
  .book .note { display: inline-block; inline-size: 100%; color: var(--soft); font-size: var(--small); text-decoration: none; }
  .narrow .book { font-size: 0.82rem; }
  .narrow .book button.open { min-inline-size: 1.8rem; font-size: inherit; }
  .narrow table { font-size: 0.88rem; }
  .narrow th, .narrow td { padding-inline-end: 0.5rem; }
  .narrow .book th, .narrow .book td { padding-inline-end: 0.35rem; }
  @media screen and (max-width: 56rem) {
    .book .spare { display: none; }
  }
  dl.particulars { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(8.2rem, 100%), 1fr)); gap: 0.3rem 1.5rem; margin: 0.4rem 0 0.6rem; }
  dl.particulars dt { color: var(--soft); font-size: var(--small); }
  dl.particulars dd { margin: 0; overflow-wrap: anywhere; }
  dl.particulars .wide { grid-column: 1 / -1; }
  .charts { display: grid; grid-template-columns: 1fr 1fr; gap: 0 2.25rem; margin-block-start: 0.5rem; }
  .narrow .charts { grid-template-columns: minmax(0, 1fr); }
  .charts figure { margin: 0; min-inline-size: 0; }
  .charts figcaption { font-size: var(--small); color: var(--soft); }
  .charts h4 { font-size: 0.92rem; font-weight: 600; margin: 0.4rem 0 0.2rem; }
  .advice li small { display: block; color: var(--soft); font-size: var(--small); }
  .pager { display: flex; flex-wrap: wrap; gap: 0.5rem; align-items: center; margin-block: 0.5rem; }
  .pager .soft { margin-inline: 0.25rem; }
  input[type='file'] { font: inherit; font-size: 0.92rem; max-inline-size: 100%; min-height: var(--target); color: var(--ink); }
  input::file-selector-button {
    font: inherit; color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: 3px; padding: 0.15rem 0.7rem; margin-inline-end: 0.75rem; cursor: pointer;
  }
  hr { border: 0; border-block-start: 1px solid var(--line); margin-block: 1rem; }
  @media print {
    .book, .book .note, .book .mark { font-size: 8pt; }
    .charts { grid-template-columns: 1fr 1fr; }
    .book th, .book td { padding: 0.08rem 0.35rem 0.08rem 0; }
    .book button.open { display: inline; border: 0; color: inherit; padding: 0; min-height: 0; text-decoration: none; font-size: inherit; }
    .book tr { break-inside: avoid; }
  }
`;
