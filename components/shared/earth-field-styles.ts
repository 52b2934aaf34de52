import { css } from 'lit';

/** The table of the elements of the Earth's field. */
export const earthFieldStyles = css`
  table.elements { inline-size: 100%; max-inline-size: 34rem; }
  table.elements caption { text-align: start; padding-block-end: var(--space-1); }
  table.elements td { white-space: nowrap; }
  .narrow table.elements td { font-size: var(--small); }
`;
