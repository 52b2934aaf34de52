import { css } from 'lit';

/** What sights alone show: what is supposed of a cause of doubt, and the piece of horizon. */
export const sightStyles = css`
  .supposed .field { margin: 0; min-inline-size: 6rem; white-space: normal; text-align: start; }
  .supposed .entry { flex-wrap: nowrap; column-gap: var(--space-1); }
  .supposed .entry input { flex-basis: 2.5rem; min-inline-size: 2.5rem; }
  .ribbon { max-inline-size: 37rem; margin: var(--space-3) 0 var(--space-2); }
`;
