import { css } from 'lit';

/** The grid to the left, what it comes to beside it; below it where there is no room for both. */
export const swingStyles = css`
  .swing { display: flex; flex-wrap: wrap; gap: 1.25rem 2.25rem; align-items: flex-start; }
  .swing > .entry-side { flex: 1 1 24rem; min-inline-size: 0; }
  .swing > .result-side { flex: 1.4 1 33rem; min-inline-size: 0; }
  /* Two more columns leave no room beside the grid. */
  .swing.wide > .entry-side { flex-basis: 100%; }
  /* The curve stays in sight while a long column is typed. */
  .frame:not(.narrow) .swing > .result-side { position: sticky; inset-block-start: 0; }
  .swing.wide > .result-side.result-side { position: static; }
  [part='curve'] { max-inline-size: 46rem; }
  .narrow .swing { flex-direction: column; align-items: stretch; }
  .narrow .swing > .entry-side, .narrow .swing > .result-side { flex-basis: auto; inline-size: 100%; }
  .settings { display: flex; flex-wrap: wrap; gap: 0 1.5rem; align-items: flex-start; }
  .settings > * { flex: 1 1 11rem; min-inline-size: min(100%, 11rem); }
  .settings > fieldset { flex-basis: 16.5rem; }
  .settings > .field:first-child, .settings > .pair { flex-basis: 19rem; }
  .settings > .pair { align-items: start; }
  .settings > p { flex-basis: 100%; }
  .settings .choices label { flex-basis: auto; padding-inline: 0.4rem; gap: 0.3rem; }
  .settings.judge { margin-block-start: 1rem; }
  .settings.judge > .hint { margin-block-start: -0.4rem; }
  .hint.how { margin-block: 0 0.5rem; }
  ul.prompts { margin: 0.2rem 0 0.6rem; padding-inline-start: 1.2rem; color: var(--soft); }
  table.grid { inline-size: 100%; }
  table.grid td.heading { inline-size: 5.2rem; }
  table.grid th { padding: 0.2rem 0.5rem 0.2rem 0; vertical-align: bottom; line-height: 1.2; }
  table.grid td { padding: 0 0.5rem 0 0; white-space: nowrap; }
  table.grid th:last-child, table.grid td:last-child { padding-inline-end: 0; }
  .narrow table.grid th, .narrow table.grid td { padding-inline-end: 0.3rem; }
  table.grid td.typed input {
    display: block; inline-size: 100%; min-inline-size: 3.4rem; min-height: var(--target); margin: 0; padding: 0.1rem 0.3rem; border: 0; border-radius: 0;
    background: transparent; color: var(--ink); font: inherit; font-size: var(--figure); font-variant-numeric: inherit;
  }
  table.grid td.typed { padding-inline-end: 0; border-inline-end: 1px solid var(--line); min-inline-size: 3.8rem; }
  table.grid td.typed + td:not(.typed) { padding-inline-start: 0.5rem; }
  table.grid td.typed input:focus { background: var(--raise); outline: 2px solid var(--accent); outline-offset: -2px; }
  table.grid td.typed input[aria-invalid='true'] { color: var(--bad); box-shadow: inset 0 -2px 0 var(--bad); }
  table.grid td.typed input.idle { opacity: 0.6; }
  table.grid select { max-inline-size: 8rem; min-height: var(--target); font: inherit; font-size: 0.88rem; background: var(--paper); color: var(--ink); border: 1px solid var(--edge); border-radius: 3px; }
  table.grid tr.struck td { color: var(--soft); }
  table.grid tr.struck td.typed input, table.grid tr.struck td.figure { text-decoration: line-through; color: var(--soft); }
  table.grid td.bad { color: var(--bad); font-weight: 600; }
  table.grid tr.reason td { padding-block: 0 0.35rem; white-space: normal; }
  table.grid tr.reason .problem { max-inline-size: 24rem; }
  table.grid tr.reason[hidden] { display: none; }
  .use { display: flex; align-items: center; justify-content: center; min-height: var(--target); min-inline-size: var(--target); cursor: pointer; }
  .use input { inline-size: 1.05rem; block-size: 1.05rem; margin: 0; accent-color: var(--accent); }
  .tools { margin-block: 0.6rem; }
  .mixed { display: flex; align-items: center; gap: 0.5rem; font-size: 0.92rem; color: var(--soft); min-height: var(--target); }
  .mixed input { accent-color: var(--accent); inline-size: 1.05rem; block-size: 1.05rem; margin: 0; }
  .beyond { color: var(--bad); font-weight: 600; }
  .beyond::before { content: '▲ '; }
  table.coefficients th[scope='row'] { color: var(--ink); font-size: 0.95rem; white-space: nowrap; }
  table.coefficients th .part { color: var(--soft); font-size: var(--small); margin-inline-start: 0.3rem; }
  .narrow table.coefficients th .part { display: none; }
  table.coefficients td { white-space: nowrap; }
  .advice ol { padding-inline-start: 1.3rem; margin-block: 0.25rem 0.75rem; }
  .advice li { margin-block-end: 0.5rem; max-inline-size: 40rem; }
  @media print {
    .swing { display: block; }
    .frame .swing > .result-side.result-side { margin-block-start: 1rem; position: static; }
    table.grid { inline-size: auto; }
    table.grid td.typed input { min-height: 0; padding-block: 0; }
    table.grid select { border: 0; appearance: none; }
    .use { min-height: 0; }
    .mixed, .use input:not(:checked) { display: none; }
  }
`;
