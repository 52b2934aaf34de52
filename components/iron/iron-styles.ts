import { css } from 'lit';

/** The bench: stations above, what is set at the left, what it does at the right. */
export const ironStyles = css`
  .top { display: flex; flex-wrap: wrap; gap: 0 var(--space-9); justify-content: space-between; align-items: baseline; }
  .top > div { flex: 0 1 20rem; min-inline-size: 0; }
  .columns { grid-template-columns: clamp(16.5rem, 34%, 20rem) minmax(0, 1fr); }
  .tabs { display: flex; flex-wrap: wrap; gap: 0 var(--space-4); border-block-end: 1px solid var(--line); margin-block-end: var(--space-4); }
  .tabs button { border: 0; border-block-end: 2px solid transparent; border-radius: 0; padding: var(--space-1) 0; margin-block-end: -1px; min-height: var(--target); }
  .tabs button[aria-selected='true'] { color: var(--ink); border-block-end-color: var(--accent); }
  .narrow .tabs { gap: 0 var(--space-3); }
  details > summary { margin-block-end: var(--space-1); }
  .fields details { border-block-start: 0; }
  .fields details + details { border-block-start: 1px solid var(--line); }
  .place .pair { margin-block-start: calc(-1 * var(--space-1)); }

  .slider { margin-block-end: var(--space-2); }
  .slider.with-picture { display: grid; grid-template-columns: 5.25rem minmax(0, 1fr); gap: var(--space-3); align-items: center; }
  .slider .field { display: grid; grid-template-columns: minmax(0, 1fr) 5.75rem; gap: 0 var(--space-3); align-items: end; margin: 0; }
  .slider .field > label { line-height: 1.25; padding-block-end: var(--space-1); white-space: pre-wrap; }
  .slider .field > .problem { grid-column: 1 / -1; }
  :is(.narrow, .close) .slider .field { grid-template-columns: minmax(0, 1fr) 4.6rem; gap: 0 var(--space-2); }
  .slider .entry { flex-wrap: nowrap; gap: var(--space-1); }
  .slider .entry input { min-inline-size: 2.5rem; }

  .answer { --answer: var(--lubber-text-answer, 2.1rem); }
  .answer small { flex-basis: 100%; }
  .tight .answer, .answer.lost { --answer: var(--lubber-text-answer, 1.6rem); }
  .answer small.trouble { color: var(--warn); white-space: normal; }
  .tight dl.split { gap: var(--space-1) var(--space-4); }
  .legend-line { margin-block: var(--space-1) var(--space-2); }
  .parts { display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-4); margin-block: var(--space-1) 0; }
  .parts label { display: flex; align-items: center; gap: var(--space-2); font-size: var(--medium); min-height: var(--target); cursor: pointer; }
  .explanation > section { margin-block-start: var(--space-6); }
  figure { margin: 0 0 var(--space-3); }
  .two { display: grid; grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: var(--space-4) var(--space-9); align-items: start; }
  .narrow .explanation table { --cell: calc(1.5 * var(--space-1)); font-size: var(--small); }
  .narrow table.heel { --cell: var(--space-half); }
  table.voyage th.group { padding-block-start: var(--space-3); color: var(--soft); font-size: var(--small); }
  .tight .coefficients th .soft { display: none; }
  .explanation td, .explanation tbody .figure { white-space: nowrap; }

  svg .rule { stroke: var(--line); stroke-width: 1; }
  svg .axis { stroke: var(--soft); stroke-width: 1; }
  .curve .whole, .directive .whole { fill: none; stroke: var(--ink); stroke-width: 2.2; stroke-linejoin: round; }
  .curve .beside { fill: none; stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 6 4; }
  .curve .part { fill: none; stroke: var(--accent); stroke-width: 1.1; }
  .curve .part.C { stroke: var(--body); }
  .curve .part.D, .curve .part.E, .curve .part.A { stroke: var(--soft); }
  .curve .part.E { stroke-dasharray: 1 3; stroke-linecap: round; stroke-width: 1.6; }
  .curve .part.induced { stroke-dasharray: 3 3; }
  .curve .letter { font-size: 12px; fill: var(--soft); paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
  .curve line.here { stroke: var(--accent); stroke-width: 1; }
  .curve circle.here { fill: var(--accent); stroke: var(--paper); stroke-width: 1.5; }
  .directive .mean { stroke: var(--ink); stroke-dasharray: 5 4; }
  .force-picture { max-inline-size: 16rem; }
  .force-picture text { paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
  .directive { max-inline-size: 22rem; }
  .ellipse { fill: none; stroke: var(--ink); stroke-width: 1.6; }
  .now { stroke: var(--accent); stroke-width: 2; }
  .force-picture .end { fill: var(--accent); }
  .lost { stroke: var(--warn); stroke-width: 2.5; }
  .compass { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }

  .hull { fill: none; stroke: var(--edge); stroke-width: 1; }
  .rod { stroke-width: 4; stroke: var(--soft); }
  .rod.none { stroke-width: 1; stroke-dasharray: 2 2; }
  .rod.red, .piece.red { stroke: var(--red); }
  .rod.blue, .piece.blue { stroke: var(--blue); }
  .rod-picture text { font-size: 10px; font-weight: 600; }
  .piece { fill: none; stroke: var(--soft); stroke-width: 4; }
  .piece.plain { stroke-width: 1.5; }
  .pole { font-weight: 600; }
  .north { stroke: var(--soft); stroke-width: 1.2; }
  .polarity { max-inline-size: 24rem; }
  .field-picture { max-inline-size: 22rem; }
  .field-picture .level { stroke: var(--line); }
  .field-picture .closing { stroke: var(--line); stroke-dasharray: 2 3; }
  .field-picture .force { stroke: var(--soft); stroke-width: 1.6; }
  .field-picture .total { stroke: var(--ink); stroke-width: 2.2; }

  @media print {
    .rod-picture, .parts { display: none; }
    .place, .coefficients { break-inside: avoid; }
    .slider.with-picture { grid-template-columns: 1fr; }
    .fields > :not(details, .field, .place, .slider, .pair), .fields details:not([open]) { display: none; }
    .fields { columns: 2; margin-block-end: 1rem; }
    .curve { max-inline-size: 36rem; }
    table { font-size: 9pt; }
    .working math { font-size: 0.8em; }
  }
`;
