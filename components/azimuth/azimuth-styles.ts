import { css } from 'lit';

export const azimuthStyles = css`
  textarea {
    inline-size: 100%; font: inherit; font-variant-numeric: tabular-nums; color: var(--ink); background: var(--raise);
    border: 1px solid var(--edge); border-radius: 3px; padding: 0.4rem 0.5rem; resize: vertical;
  }
  textarea::placeholder { color: var(--soft); opacity: 1; }
  tr.struck td:not(:last-child) { text-decoration: line-through; color: var(--soft); }
  tr.chosen td { background: var(--raise); }
  td button.plain { min-height: 1.5rem; padding: 0; }
  .scroll { margin-block-end: 0.5rem; }
`;
