import { css } from 'lit';

/** The moment chosen, drawn beside the words for it. */
export const amplitudeStyles = css`
  .moment-rule { display: grid; grid-template-columns: 7rem 1fr; gap: var(--space-3); align-items: center; margin-block-end: var(--gap); }
`;
