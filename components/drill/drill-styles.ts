import { css } from 'lit';

/** The task to the left, the answer to the right; on paper one below the other. */
export const drillStyles = css`
  .at { color: var(--soft); font-size: var(--small); font-weight: 400; white-space: nowrap; }
  #title { display: flex; flex-wrap: wrap; gap: 0 0.6em; align-items: baseline; }
  h2:focus, #summary:focus { outline: none; }
  .desk { display: grid; grid-template-columns: minmax(0, 36rem) minmax(15rem, 21rem); gap: 0 var(--space-9); align-items: start; }
  .narrow .desk { grid-template-columns: minmax(0, 1fr); row-gap: var(--space-4); }
  .task { font-size: var(--figure); max-inline-size: 38rem; }
  .setup { display: grid; grid-template-columns: minmax(10rem, 16rem) 12rem auto; gap: 0 var(--space-6); border-block-end: 1px solid var(--line); margin-block-end: var(--space-4); }
  .setup > button { margin-block-end: var(--gap); place-self: end start; }
  .narrow .setup { grid-template-columns: minmax(0, 1fr); }
  dl.givens { margin: var(--space-2) 0 var(--space-3); max-inline-size: 34rem; }
  dl.givens > div { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 var(--space-4); border-block-end: 1px solid var(--line); padding-block: var(--space-1); }
  dl.givens dt { color: var(--soft); font-size: var(--medium); }
  dl.givens dd { margin-inline-start: auto; }
  .given-table { margin-block-end: var(--space-3); }
  .given-table caption { text-align: start; color: var(--soft); font-size: var(--small); padding-block-end: var(--space-1); }
  .given-table :is(th, td) { padding-block: var(--space-half); padding-inline: 0 var(--space-3); white-space: nowrap; }
  .narrow .given-table :is(th, td) { padding-inline-end: var(--space-2); }
  .given-table :nth-child(2n) { padding-inline-end: var(--space-6); }
  .narrow .given-table :nth-child(2n) { padding-inline-end: var(--space-3); }
  .verdict { font-size: var(--medium); margin: calc(-1 * var(--space-2)) 0 var(--gap); padding-inline-start: var(--space-2); border-inline-start: 3px solid var(--line); }
  .verdict.right { border-inline-start-color: var(--accent); }
  .verdict.wrong { border-inline-start-color: var(--warn); }
  .narrow .answer + p { margin-block-start: var(--space-3); }
  .message { margin: var(--space-3) 0 0; }
  .message.hint { border-inline-start: 3px solid var(--accent); padding-inline-start: var(--space-2); color: var(--ink); font-size: var(--medium); }
  .progress { display: flex; flex-wrap: wrap; gap: var(--space-1); list-style: none; margin: 0 0 var(--space-4); padding: 0; }
  .progress button { min-inline-size: max(2.1rem, var(--target)); padding-inline: var(--space-2); border-color: var(--line); color: var(--soft); }
  .progress button.here { border-color: var(--accent); color: var(--ink); font-weight: 600; }
  .progress :is(.right, .partly, .wrong) { background: var(--raise); }
  .progress button span { margin-inline-start: 0.2em; }
  dl.outcome { margin: 0; }
  dl.outcome dt { color: var(--soft); font-size: var(--small); }
  dl.outcome dd { margin: 0 0 var(--space-3); }
  dl.outcome .given { font-size: var(--large); font-weight: 600; }
  dl.outcome .wrong .given { font-weight: 400; }
  dl.outcome .key { color: var(--soft); white-space: nowrap; margin-inline-start: var(--space-3); }
  dl.outcome .key bdi { color: var(--ink); font-weight: 600; }
  dl.outcome .verdict { margin-block: var(--space-1) 0; }
  .foot { margin-block-start: var(--space-6); border-block-start: 1px solid var(--line); padding-block-start: var(--space-3); }
  .sheet article { margin-block-end: var(--space-6); }
  .sheet-head { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 var(--space-4); align-items: baseline; }
  .blanks { display: flex; gap: var(--space-6); color: var(--soft); font-size: var(--small); margin-block-end: var(--space-6); }
  .blanks span { flex: 1; border-block-end: 1px solid var(--edge); padding-block: var(--space-4) var(--space-1); }
  .blanks span:last-child { flex: 0 0 8rem; }
  dl.blank, dl.answers { margin: var(--space-3) 0 0; max-inline-size: 34rem; }
  dl.blank > div { display: flex; align-items: baseline; gap: var(--space-3); padding-block: var(--space-2) 0; }
  dl.blank dt, dl.answers dt { color: var(--soft); font-size: var(--medium); }
  dl.blank .result dt, dl.answers .result dt { color: var(--ink); }
  dl.blank dd { flex: 1; margin: 0; border-block-end: 1px solid var(--edge); min-block-size: 1.4em; }
  dl.blank dd.choice { border: 0; }
  dl.blank .option { padding-inline: var(--space-2) var(--space-4); }
  dl.answers > div { display: flex; justify-content: space-between; gap: var(--space-4); border-block-end: 1px solid var(--line); padding-block: var(--space-1); }
  dl.answers dd { margin: 0; }
  dl.answers .result dd { font-weight: 600; }
  dl.answers small { color: var(--soft); font-weight: 400; margin-inline-start: 0.4em; }
  /* A fraction of two lines overflows its line box: the next formula would touch it. */
  .narrow .working .line { row-gap: var(--space-2); }
  @media print {
    .sheet article { break-inside: avoid; }
    .sheet.key { break-before: page; }
    .given-table { font-size: 9.5pt; }
  }
`;
