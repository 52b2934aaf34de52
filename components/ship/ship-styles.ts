import { css } from 'lit';

export const shipStyles = css`
  .bar { display: flex; flex-wrap: wrap; gap: 0.1rem 1.25rem; align-items: baseline; }
  .bar h2 { margin: 0; }
  .grid { display: grid; grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); gap: 0 2rem; padding-block-start: 0.5rem; }
  .open-file { font-size: 0.92rem; }
  .open-file, .open-file input { min-inline-size: 0; max-inline-size: 100%; }
  .open-file input { font: inherit; color: var(--ink); overflow: hidden; }
  .open-file input::file-selector-button {
    font: inherit; color: var(--accent); background: none; border: 1px solid var(--edge); border-radius: 3px; padding: 0.15rem 0.7rem; min-height: var(--target); cursor: pointer;
  }
  #file-hint { margin-block-end: 0.5rem; }
  textarea { inline-size: 100%; font: inherit; font-variant-numeric: tabular-nums; color: var(--ink); background: var(--raise); border: 1px solid var(--edge); border-radius: 3px; padding: 0.4rem 0.5rem; }
  .plain-text input { font-size: 1rem; }
`;
