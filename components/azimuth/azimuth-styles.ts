import { css } from 'lit';

export const azimuthStyles = css`
  tr.struck td:not(:last-child) { text-decoration: line-through; color: var(--soft); }
  tr.chosen td { background: var(--raise); }
  td button.plain { min-height: var(--target-beside); padding: 0; margin: 0; white-space: nowrap; text-align: start; }
  /* What scrolls sideways cuts what stands out of it: room for the ring of the focus. */
  table.bodies { inline-size: calc(100% - var(--space-1)); margin-inline-start: var(--space-1); }
  table.bodies button:focus-visible { outline-offset: 0; }
  table.bodies td small { display: block; color: var(--soft); line-height: 1.3; }
  table.bodies td { vertical-align: top; }
  details[part='bodies'] { margin-block-start: var(--space-4); }
`;
