import { css } from 'lit';

export const fieldMapStyles = css`
  .controls { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(17rem, 100%), 1fr)); gap: 0 var(--space-6); align-items: start; }
  /* What is wrong with the date stands below both, so that the slider stays where it is. */
  .day-and-year { display: grid; grid-template-columns: minmax(6.4rem, 1fr) minmax(0, 1fr); gap: 0 var(--space-3); margin-block-end: var(--gap); }
  .day-and-year .field { display: contents; }
  .day-and-year :is(label, .entry) { grid-column: 1; }
  .day-and-year .problem { grid-column: 1 / -1; }
  .day-and-year .years { grid-area: 1 / 2 / 3; align-self: end; font-size: var(--small); color: var(--soft); }
  .years input { display: block; min-height: var(--target); }
  .sheet { min-inline-size: 0; overflow: hidden; cursor: crosshair; }
  .sheet:focus-visible { outline-offset: -2px; }
  .sheet svg { margin-inline: auto; inline-size: auto; max-inline-size: 100%; block-size: auto; }
  .map text.soft { font-size: 11px; }
  .map .sea { fill: var(--raise); }
  .map .land { fill: var(--line); fill-opacity: 0.55; stroke: var(--edge); stroke-width: 0.6; stroke-linejoin: round; }
  .map .graticule { fill: none; stroke: var(--line); stroke-width: 0.7; }
  .map .outline { fill: none; stroke: var(--edge); stroke-width: 1; }
  .line { fill: none; stroke: var(--accent); stroke-width: 1; stroke-linejoin: round; }
  .line.negative { stroke-dasharray: 5 2.5; }
  .line.zero { stroke-width: 2.2; }
  .equator { fill: none; stroke: var(--body); stroke-width: 1.6; stroke-dasharray: 9 3 1.5 3; }
  .zone { stroke: var(--warn); stroke-width: 0.8; }
  .hatching { stroke: var(--warn); stroke-width: 1; stroke-opacity: 0.55; }
  .map .level { font-size: 11.5px; fill: var(--ink); paint-order: stroke; stroke: var(--raise); stroke-width: 3.5px; stroke-linejoin: round; }
  .pole { fill: none; stroke: var(--ink); stroke-width: 1.5; }
  .pole.filled { fill: var(--ink); stroke: var(--raise); stroke-width: 1; }
  .pole.open { fill: var(--raise); }
  .cross { fill: none; stroke: var(--ink); stroke-width: 0.8; stroke-dasharray: 1.5 2.5; }
  .cursor { fill: none; stroke: var(--ink); stroke-width: 1.4; }
  .halo { fill: var(--raise); fill-opacity: 0.7; }
  .picked { fill: none; stroke: var(--bad); stroke-width: 2; }
  .picked.dot { fill: var(--bad); stroke: none; }
  .key { list-style: none; display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-4); padding: 0; margin: var(--space-2) 0; }
  .key li { display: flex; align-items: center; gap: var(--space-2); }
  .key svg { inline-size: 28px; flex: none; }
  .below { margin-block-start: var(--space-6); }
  table.world { --cell: var(--space-3); font-size: var(--small); white-space: nowrap; }
  .close table.world { --cell: 0.45rem; }
  /* In the middle of a table that scrolls it would be out of sight. */
  .world caption { text-align: start; }
  @media (forced-colors: active) {
    .map .land { fill: none; }
  }
  @media print {
    .sheet svg { inline-size: 100%; }
    .controls { display: none; }
    .columns > .fields { columns: 2; }
    table.world { break-inside: avoid; --cell: 0.45rem; }
    table.world, table.world th { font-size: 8pt; }
  }
`;
