import { css } from 'lit';

/** The moment chosen, drawn beside the words for it. */
export const amplitudeStyles = css`
  .moment-rule { display: grid; grid-template-columns: minmax(0, 7rem) 1fr; align-items: center; gap: var(--space-3); margin-block-end: var(--gap); }
`;
