import { css } from 'lit';

export const shipStyles = css`
  .bar { display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-6); align-items: baseline; }
  /* A name without a space breaks too: beside other things it would not. */
  .bar h2, .bar p { margin: 0; min-inline-size: 0; max-inline-size: 100%; }
  .bar bdi { display: inline-block; }
  /* In twos: of three the card of the steering compass would stand alone below a hole. */
  .grid { display: grid; grid-template-columns: repeat(auto-fit, minmax(max(14rem, 34%), 1fr)); gap: 0 var(--space-6); padding-block-start: var(--space-2); }
  .problem + .row, .hint + p > button { margin-block-start: var(--space-2); }
  .open-file { font-size: var(--medium); }
  .open-file, .open-file input { min-inline-size: 0; max-inline-size: 100%; }
  #file-hint { margin-block-end: var(--space-2); }
  .plain-text input { font-size: 1rem; }
`;
