import { css } from 'lit';

/** The grid to the left, what it comes to beside it; below it where there is no room for both. */
export const swingStyles = css`
  .swing { display: flex; flex-wrap: wrap; gap: var(--space-6) var(--space-9); align-items: flex-start; }
  .swing > .entry-side { flex: 1 1 21rem; min-inline-size: 0; }
  .swing.broad > .entry-side { flex-basis: 24rem; }
  .swing > .result-side { flex: 3 1 25rem; min-inline-size: 0; }
  /* Two more columns leave no room beside the grid. */
  .swing.wide > .entry-side { flex-basis: 100%; }
  /* The curve stays in sight while a long column is typed. */
  .frame:not(.narrow) .swing > .result-side { position: sticky; inset-block-start: 0; }
  .swing.wide > .result-side.result-side { position: static; }
  [part='curve'] { max-inline-size: 46rem; }
  .both [part='curve'] { max-inline-size: 34rem; }
  .narrow .swing { flex-direction: column; align-items: stretch; }
  .frame.narrow .swing > * { flex-basis: auto; inline-size: 100%; }
  .settings { display: flex; flex-wrap: wrap; gap: 0 var(--space-6); align-items: flex-start; }
  .settings > * { flex: 1 1 12rem; min-inline-size: min(100%, 12rem); }
  .settings .entry input { flex-basis: 4.5rem; }
  .settings > fieldset { flex-basis: 16.5rem; }
  .settings > .field:first-child, .settings > .pair { flex-basis: 19rem; }
  .settings > .pair { align-items: start; }
  .settings > p { flex-basis: 100%; }
  .settings .choices label { flex-basis: auto; }
  .settings.judge { margin-block-start: var(--space-4); }
  .hint.reads { margin-block: 0 var(--space-2); }
  ul.prompts { margin: var(--space-1) 0 var(--space-2); padding-inline-start: var(--space-4); color: var(--soft); }
  /* A figure that changes in a table moves nothing outside: a tenth less to do at each key. */
  table { contain: layout; }
  table.grid { inline-size: 100%; max-inline-size: 40rem; }
  table.grid td.heading { inline-size: 5.2rem; }
  table.grid th { padding-block: var(--space-1); padding-inline: 0 var(--space-2); vertical-align: bottom; line-height: 1.2; }
  table.grid td { padding-block: 0; padding-inline: 0 var(--space-2); white-space: nowrap; }
  .narrow table.grid th, .narrow table.grid td { padding-inline-end: var(--space-1); }
  table.grid th:last-child, table.grid td:last-child { padding-inline-end: 0; }
  /* What is typed in a cell moves no other: the page is not laid out for it. */
  table.grid td.typed input {
    contain: size layout; display: block; inline-size: 100%; min-inline-size: 3.4rem; min-height: var(--target); margin: 0; padding: var(--space-half) var(--space-1); border: 0; border-radius: 0;
    background: transparent; color: var(--ink); font: inherit; font-size: var(--figure);
  }
  table.grid td.typed { padding-inline-end: 0; border-inline-end: 1px solid var(--line); min-inline-size: 3.8rem; }
  table.grid td.time input { min-inline-size: 5.4rem; }
  table.grid td.typed + td:not(.typed) { padding-inline-start: var(--space-2); }
  .narrow table.grid td.heading { inline-size: 3.4rem; }
  .narrow table.grid td.typed { min-inline-size: 0; }
  .narrow table.grid td.typed + td:not(.typed) { padding-inline-start: var(--space-1); }
  .narrow table.grid td.typed input { min-inline-size: 3.1rem; padding-inline: 1px; font-size: 1rem; }
  .narrow table.grid.crowded td.typed input { min-inline-size: 3rem; font-size: var(--medium); }
  .narrow table.grid.crowded td.time input { min-inline-size: 4.6rem; }
  .narrow table.grid td.figure { line-height: 1.25; }
  .narrow table.grid.crowded td.figure { font-size: var(--small); }
  .narrow table.grid.crowded th { font-size: 0.75rem; }
  .narrow table.grid tr.beside th { padding-inline-end: var(--space-half); }
  table.grid tr.beside th { font-size: var(--small); text-align: end; vertical-align: middle; }
  table.grid tr.beside td.steering { border-inline-start: 0; padding-inline-start: 0; }
  table.grid td.typed input:focus { background: var(--raise); outline: 2px solid var(--accent); outline-offset: -2px; }
  table.grid td.typed input[aria-invalid='true'] { color: var(--bad); box-shadow: inset 0 -2px 0 var(--bad); }
  table.grid td.typed input.idle { opacity: 0.6; }
  table.grid select { max-inline-size: 8rem; min-height: var(--target); font: inherit; font-size: var(--medium); background: var(--paper); color: var(--ink); border: 1px solid var(--edge); border-radius: var(--radius); }
  table.grid tr.struck td { color: var(--soft); }
  table.grid tr.struck td.typed input, table.grid tr.struck td.figure { text-decoration: line-through; color: var(--soft); }
  /* A figure and the letter behind it run as they are written. */
  .closed, .crowded td.figure { direction: ltr; }
  /* No figure makes its cell larger, so none moves another: see laid-out.ts. */
  .frame:not(.narrow) .closed { contain: size layout; block-size: 1.4em; min-inline-size: 4.2em; line-height: 1.4; }
  .frame:not(.narrow) .bad .closed { min-inline-size: 5.4em; }
  .frame:not(.narrow) .doubted.closed { min-inline-size: 8.4em; }
  table.grid td.bad { color: var(--bad); font-weight: 600; padding-inline-start: var(--space-1); }
  table.grid tr.reason td { padding-block: 0 var(--space-2); white-space: normal; }
  table.grid tr.reason .problem { max-inline-size: 24rem; }
  .use { display: flex; align-items: center; justify-content: center; min-height: var(--target); min-inline-size: var(--target); cursor: pointer; }
  .paper-only { display: none; }
  table.grid tr.compasses th { color: var(--ink); }
  table.grid td.steering, table.grid th.steering { border-inline-start: 1px solid var(--line); padding-inline-start: var(--space-2); }
  table.grid tr.steering-struck td.steering input, table.grid tr.steering-struck td.steering ~ td.figure { text-decoration: line-through; color: var(--soft); }
  h3.compass { border-block-start: 1px solid var(--line); padding-block-start: var(--space-3); margin-block-start: var(--space-4); font-size: var(--large); }
  .wide .of-compasses, .binnacles { display: flex; flex-wrap: wrap; gap: 0 var(--space-9); align-items: flex-start; }
  .wide .of-compass { flex: 1 1 26rem; min-inline-size: 0; }
  .binnacles > * { flex: 1 1 20rem; min-inline-size: 0; max-inline-size: 36rem; }
  .narrow .of-compass, .narrow .binnacles > * { flex-basis: 100%; }
  .binnacles { margin-block-start: var(--space-3); }
  #line, #line-problem { margin-block-end: var(--gap); }
  .stage { max-inline-size: 22rem; margin-block-start: var(--space-3); }
  .narrow table.grid tr.reason .problem { max-inline-size: 16rem; }
  table.change { margin-block-end: var(--space-3); }
  .narrow table.change td.figure { white-space: normal; }
  table.correctors { inline-size: 100%; margin-block: var(--space-2); }
  .tools { margin-block: var(--space-2); }
  .mixed { margin-block-end: var(--space-half); display: flex; align-items: center; gap: var(--space-2); font-size: var(--medium); color: var(--soft); min-height: var(--target); }
  .beyond { color: var(--bad); font-weight: 600; }
  .beyond::before { content: '▲ '; content: '▲ '/''; }
  table.coefficients tbody th { white-space: nowrap; }
  table.coefficients th .part { color: var(--soft); font-size: var(--small); margin-inline-start: var(--space-1); }
  .narrow table.coefficients th .part { display: none; }
  .advice ol { padding-inline-start: var(--space-6); margin-block: var(--space-1) var(--space-3); }
  .advice li { margin-block-end: var(--space-2); max-inline-size: 40rem; }
  @media print {
    .frame.frame { padding-block: 1rem; }
    .swing { display: block; }
    /* A key on the next page tells nobody what the lines are. */
    [part='curve'] { break-inside: avoid; }
    table.grid tr.blank { display: none; }
    .frame .swing > .result-side.result-side { margin-block-start: 1rem; position: static; }
    table.grid { inline-size: auto; }
    table.grid td.typed input { min-height: 0; padding-block: 0; }
    table.grid select { border: 0; appearance: none; }
    .use { min-height: 0; }
    .paper-only { display: block; }
    .wide .of-compasses, .binnacles { display: block; }
    .frame .of-compasses.both { display: grid; grid-template-columns: 1fr 1fr; gap: 0 8mm; }
    .headline, .ending { break-inside: avoid; }
    .binnacles > * { max-inline-size: none; }
    table.coefficients, table.change, table.correctors { break-inside: avoid; }
    table.correctors { font-size: 9pt; table-layout: fixed; }
    table.correctors th:first-child { inline-size: 46%; }
    /* What does not count is struck out. */
    .mixed, .use-cell { display: none; }
  }
`;
