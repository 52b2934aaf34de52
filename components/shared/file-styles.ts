import { css } from 'lit';

/** The choice of a file, its button like the others. To stand before the shared styles. */
export const fileStyles = css`
  input[type='file'] { font: inherit; font-size: var(--medium); color: var(--ink); min-inline-size: 0; max-inline-size: 100%; min-height: var(--target); overflow: hidden; }
  input::file-selector-button {
    font: inherit; color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: var(--radius); padding: var(--space-half) var(--space-3);
    min-height: var(--target); margin-inline-end: var(--space-3); cursor: pointer;
  }
`;
