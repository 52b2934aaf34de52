import { css } from 'lit';

export const azimuthStyles = css`
  textarea {
    inline-size: 100%; font: inherit; font-variant-numeric: tabular-nums; color: var(--ink); background: var(--raise);
    border: 1px solid var(--edge); border-radius: 3px; padding: 0.4rem 0.5rem; resize: vertical;
  }
  textarea::placeholder { color: var(--soft); opacity: 1; }
  tr.struck td:not(:last-child) { text-decoration: line-through; color: var(--soft); }
  tr.chosen td { background: var(--raise); }
  td button.plain { min-height: 1.5rem; padding: 0; white-space: nowrap; text-align: start; }
  table.bodies { inline-size: 100%; }
  table.bodies td small { display: block; color: var(--soft); line-height: 1.3; }
  table.bodies td { vertical-align: top; }
  table.series :is(td, th):last-child, table.bodies :is(td, th):last-child { padding-inline-end: 0; }
  details[part='bodies'] { margin-block-start: 1rem; }
  /* The working has more than nine lines: room for two figures. */
  .working { padding-inline-start: 2rem; }
  .scroll { margin-block-end: 0.5rem; }
`;
