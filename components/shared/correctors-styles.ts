import { css } from 'lit';

/** The entry of correctors: a line each, three parts of it; and the lines an adjuster signs on. */
export const correctorsStyles = css`
  .correctors-entry table { inline-size: 100%; margin-block-end: var(--space-2); }
  [dir='rtl'] .correctors-entry input { text-align: right; }
  .correctors-entry input::placeholder { font-style: italic; }
  .correctors-entry caption { text-align: start; color: var(--soft); font-size: var(--small); }
  /* In one line where there is room, else where it stands below what it is: less would cut a word off. */
  .correctors-entry tr { display: flex; flex-wrap: wrap; gap: 0 var(--space-2); }
  .correctors-entry td { padding: 0; border: 0; flex: 1.5 1 9rem; }
  .correctors-entry td:first-child { flex-basis: 12rem; }
  .correctors-entry td:last-child { flex: 1 1 8rem; }
  .correctors-entry input, .correctors-entry select {
    inline-size: 100%; min-block-size: var(--target); font: inherit; font-size: var(--medium); color: var(--ink); background: transparent; border: 0;
    border-block-end: 1px solid var(--edge); border-radius: 0; padding-block: 0; padding-inline: 0 var(--space-1);
  }
  .correctors-entry select { background: var(--paper); }
  .signatures { display: grid; grid-template-columns: 2fr 1.4fr 1fr; gap: 0 var(--space-6); margin-block-start: var(--space-9); }
  .signatures p { border-block-start: 1px solid var(--ink); margin: 0; padding-block-start: var(--space-half); font-size: var(--small); color: var(--soft); }
  @media print {
    .signatures { margin-block-start: 11mm; break-inside: avoid; }
  }
`;
