import { css } from 'lit';

/** The entry of correctors: a line each, three parts of it. */
export const correctorsStyles = css`
  .correctors-entry table { inline-size: 100%; margin-block-end: var(--space-2); }
  .correctors-entry caption { text-align: start; color: var(--soft); font-size: var(--small); }
  /* In one line where there is room, else where it stands below what it is: less would cut a word off. */
  .correctors-entry tr { display: flex; flex-wrap: wrap; gap: 1px var(--space-2); }
  .correctors-entry td { padding: 0; border: 0; flex: 1.5 1 9rem; }
  .correctors-entry td:first-child { flex-basis: 12rem; }
  .correctors-entry td:last-child { flex: 1 1 8rem; }
  .correctors-entry input, .correctors-entry select {
    inline-size: 100%; min-block-size: var(--target); font: inherit; font-size: var(--medium); color: var(--ink); background: transparent; border: 0;
    border-block-end: 1px solid var(--edge); border-radius: 0; padding-block: 0; padding-inline: 0 var(--space-1);
  }
  .correctors-entry select { background: var(--paper); }
`;
