import { css } from 'lit';

export const conversionStyles = css`
  .coefficients { display: grid; grid-template-columns: repeat(auto-fill, minmax(7rem, 1fr)); gap: 0 var(--space-4); }
  .look { display: grid; grid-template-columns: repeat(auto-fit, minmax(9rem, 1fr)); gap: 0 var(--space-4); align-items: end; }
  .look + div table { margin-block-end: var(--space-3); }
  .there-and-back { display: grid; grid-template-columns: auto; justify-items: start; gap: var(--space-half); margin-block: var(--space-2) 0; font-size: var(--figure); }
  .there-and-back .soft { font-size: var(--small); }
  [dir='rtl'] .there-and-back bdi { text-align: end; }
  .pictures { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-9); align-items: start; }
  .pictures > svg { flex: 0 1 auto; }
  /* Two words would stand as large as the figure. */
  .answer .name { flex-basis: 100%; font-size: var(--large); }
  svg.chain { max-inline-size: 24rem; margin-block: var(--space-4) var(--space-2); }
  svg.chain.down { max-inline-size: 17.5rem; }
  svg .value { font-size: 16px; }
  svg.norths { max-inline-size: 18.75rem; }
  .norths line { stroke: var(--ink); stroke-width: 1.2; }
  /* A line that passes behind a name does not strike it out. */
  .norths text { paint-order: stroke; stroke: var(--paper); stroke-width: 4px; }
  .norths .magnetic { stroke-dasharray: 7 3; }
  .norths .compass { stroke-dasharray: 2 3; }
  .norths .direction { stroke: var(--accent); stroke-width: 2.4; }
  .norths .head { stroke: var(--body); stroke-width: 1.6; }
  .after-pair { margin-block: calc(-1 * var(--space-2)) var(--space-3); }
  .part > .hint { margin-block-end: var(--space-2); }
  .mark { margin: var(--space-2) 0 0; padding: var(--space-2) var(--space-3); border-inline-start: 3px solid var(--line); }
  .mark.wrong { border-inline-start-color: var(--warn); background: var(--warn-paper); }
  .mark.wrong::before { content: '▲ '; content: '▲ '/''; color: var(--warn); }
  .mark.right { border-inline-start-color: var(--accent); }
`;
