import { css } from 'lit';

export const variationStyles = css`
  figure { margin: 0; }
  figcaption { margin-block-start: var(--space-2); }
  .pictures { display: flex; flex-wrap: wrap; gap: var(--space-6) var(--space-9); align-items: end; margin-block: var(--space-4); }
  .pictures > * { flex: 1 1 13.5rem; }
  .pictures > :last-child { flex: 2 1 19rem; }
  /* The longest text that is typed anywhere. */
  .entry #rose { flex-basis: 14rem; }
  .pictures .rose { max-inline-size: 17rem; }
  .pictures .forces { max-inline-size: 22rem; }
  .forces path, .rose path, .rose circle { stroke: var(--ink); stroke-width: 1; }
  .forces .level, .forces .upright { stroke: var(--accent); stroke-width: 1.8; }
  .forces .total { stroke: var(--ink); stroke-width: 1.8; }
  .forces .arc, .forces .scale { stroke: var(--soft); }
  .rose .ring { stroke: var(--edge); }
  .rose .ticks { stroke: var(--soft); }
  .rose .true { stroke-width: 1.4; fill: none; }
  .rose .magnetic { stroke: var(--accent); stroke-width: 2; fill: var(--accent); }
  .rose .chart { stroke: var(--body); stroke-width: 1.6; stroke-dasharray: 5 3; fill: none; }
  .rose text { font-size: 13px; }
  .rose .wedge { fill: var(--accent); fill-opacity: 0.12; stroke: none; }
`;
