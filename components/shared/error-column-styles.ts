import { css } from 'lit';

/** The letter of an error in a column has a place of its own, as wide for E as for W and where there is none. */
export const errorColumnStyles = css`
  .letter { display: inline-block; min-inline-size: 1.35em; text-align: start; white-space: pre; direction: ltr; }
`;
