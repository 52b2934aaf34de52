import { css } from 'lit';

/** The task to the left, the answer to the right; on paper one below the other. */
export const drillStyles = css`
  .at { color: var(--soft); font-size: var(--small); font-weight: 400; margin-inline-start: 0.6em; white-space: nowrap; }
  h2:focus, .answer:focus { outline: none; }
  .desk { display: grid; grid-template-columns: minmax(0, 36rem) minmax(15rem, 21rem); gap: 0 2.5rem; align-items: start; }
  .narrow .desk { grid-template-columns: minmax(0, 1fr); row-gap: 1rem; }
  .task { font-size: 1.06rem; max-inline-size: 38rem; }
  .setup { display: grid; grid-template-columns: minmax(10rem, 16rem) 12rem auto; gap: 0 1.5rem; align-items: end; border-block-end: 1px solid var(--line); margin-block-end: 1rem; }
  .setup > button { margin-block-end: var(--gap); justify-self: start; }
  .narrow .setup { grid-template-columns: minmax(0, 1fr); }
  dl.givens { margin: 0.5rem 0 0.75rem; max-inline-size: 34rem; }
  dl.givens > div { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1rem; border-block-end: 1px solid var(--line); padding-block: 0.22rem; }
  dl.givens dt { color: var(--soft); font-size: 0.92rem; }
  dl.givens dd { margin: 0; margin-inline-start: auto; }
  .given-table { margin-block-end: 0.75rem; }
  .given-table caption { text-align: start; color: var(--soft); font-size: var(--small); padding-block-end: 0.2rem; }
  .given-table th, .given-table td { padding: 0.12rem 0.9rem 0.12rem 0; white-space: nowrap; }
  .narrow .given-table th, .narrow .given-table td { padding-inline-end: 0.6rem; }
  .given-table th:nth-child(2n), .given-table td:nth-child(2n) { padding-inline-end: 1.6rem; }
  .narrow .given-table th:nth-child(2n), .narrow .given-table td:nth-child(2n) { padding-inline-end: 0.9rem; }
  .verdict { font-size: 0.92rem; margin: -0.4rem 0 var(--gap); padding-inline-start: 0.6rem; border-inline-start: 3px solid var(--line); }
  .verdict.right { border-inline-start-color: var(--accent); }
  .verdict.wrong { border-inline-start-color: var(--warn); }
  .message { margin: 0.75rem 0 0; }
  .message.hint { border-inline-start: 3px solid var(--accent); padding-inline-start: 0.6rem; color: var(--ink); font-size: 0.92rem; }
  .progress { display: flex; flex-wrap: wrap; gap: 0.3rem; list-style: none; margin: 0 0 1rem; padding: 0; }
  .progress button { min-inline-size: 2.1rem; padding-inline: 0.4rem; border-color: var(--line); color: var(--soft); }
  .progress button.here { border-color: var(--accent); color: var(--ink); font-weight: 600; }
  .progress button.right, .progress button.partly, .progress button.wrong { background: var(--raise); }
  .progress button span { margin-inline-start: 0.2em; }
  dl.outcome { margin: 0; }
  dl.outcome dt { color: var(--soft); font-size: var(--small); }
  dl.outcome dd { margin: 0 0 0.9rem; }
  dl.outcome .given { font-size: 1.25rem; font-weight: 600; }
  dl.outcome .wrong .given { font-weight: 400; }
  dl.outcome .key { margin-inline-start: 0.8rem; color: var(--soft); white-space: nowrap; }
  dl.outcome .key bdi { color: var(--ink); font-weight: 600; }
  dl.outcome .verdict { margin-block: 0.2rem 0; }
  .after { margin-block-start: 1rem; }
  .foot { margin-block-start: 1.25rem; border-block-start: 1px solid var(--line); padding-block-start: 0.75rem; }
  .sheet article { margin-block-end: 1.75rem; }
  .sheet-head { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1rem; align-items: baseline; }
  .blanks { display: flex; gap: 1.5rem; color: var(--soft); font-size: var(--small); margin-block-end: 1.25rem; }
  .blanks span { flex: 1; border-block-end: 1px solid var(--edge); padding-block: 1rem 0.2rem; }
  .blanks span:last-child { flex: 0 0 8rem; }
  dl.blank, dl.answers { margin: 0.75rem 0 0; max-inline-size: 34rem; }
  dl.blank > div { display: flex; align-items: baseline; gap: 0.75rem; padding-block: 0.5rem 0; }
  dl.blank dt, dl.answers dt { color: var(--soft); font-size: 0.92rem; }
  dl.blank .result dt, dl.answers .result dt { color: var(--ink); }
  dl.blank dd { flex: 1; margin: 0; border-block-end: 1px solid var(--edge); min-block-size: 1.4em; }
  dl.blank .option { margin-inline-end: 1.5rem; }
  dl.answers > div { display: flex; justify-content: space-between; gap: 1rem; border-block-end: 1px solid var(--line); padding-block: 0.2rem; }
  dl.answers dd { margin: 0; }
  dl.answers .result dd { font-weight: 600; }
  dl.answers small { color: var(--soft); font-weight: 400; margin-inline-start: 0.4em; }
  /* A fraction of two lines overflows its line box: the next formula would touch it. */
  .narrow .working .line { row-gap: 0.6rem; }
  @media print {
    .sheet article { break-inside: avoid; }
    .sheet.key { break-before: page; }
    .given-table { font-size: 9.5pt; }
  }
`;
