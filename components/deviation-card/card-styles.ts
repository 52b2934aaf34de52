import { css } from 'lit';

export const cardStyles = css`
  .paper { background: var(--raise); border: 1px solid var(--line); padding: var(--space-6); max-inline-size: 46rem; color: var(--ink); }
  .paper.pocket { max-inline-size: 32em; font-size: var(--medium); padding: var(--space-3); }
  .paper h3 { margin: 0 0 var(--space-2); font-size: var(--large); }
  /* Room beside it for a downward force of two figures with its minus. */
  #vertical { flex-basis: 4.5rem; }
  .particulars { display: grid; grid-template-columns: repeat(auto-fit, minmax(9.5rem, 1fr)); gap: var(--space-2) var(--space-4); margin: 0 0 var(--space-3); }
  .pocket .particulars { grid-template-columns: 1fr 1fr; gap: var(--space-1) var(--space-3); margin-block-end: var(--space-2); }
  .paper dt { color: var(--soft); font-size: var(--small); }
  .paper dd { margin: 0; overflow-wrap: anywhere; }
  .paper dd.blank { border-block-end: 1px solid var(--edge); min-block-size: 1.4em; }
  .halves { display: grid; grid-template-columns: 1fr 1fr; gap: 0 var(--space-9); margin: 0; }
  .pocket .halves { gap: 0 var(--space-2); }
  /* The card wants the whole width before its figures get too small to read. */
  .close .columns { grid-template: none / minmax(0, 1fr); row-gap: var(--space-6); }
  .close .fields { columns: 2; column-gap: var(--space-9); }
  .close .fields > * { break-inside: avoid; }
  .narrow .paper { padding: var(--space-2); }
  .narrow .paper .halves { grid-template-columns: 1fr; gap: var(--space-3); }
  .narrow .particulars { grid-template-columns: repeat(auto-fit, minmax(7rem, 1fr)); }
  .figures { inline-size: 100%; }
  .figures th, .figures td { text-align: right; padding-block: 0.05rem; padding-inline: 0 var(--space-1); white-space: nowrap; }
  .figures thead th { white-space: normal; vertical-align: bottom; }
  .figures tbody th { color: var(--ink); font-size: inherit; }
  .figures .point > * { font-weight: 600; }
  @media screen {
    /* Four columns have no room: the name above, what is said of it below. */
    .narrow .correctors tr { display: flex; flex-wrap: wrap; border-block-end: 1px solid var(--line); padding-block: var(--space-half); }
    .narrow .correctors :is(th, td) { flex: 1 1 4rem; min-inline-size: 0; border: 0; padding-block: 0; padding-inline-end: var(--space-1); font-size: var(--small); }
    .narrow .correctors th:first-child { flex-basis: 100%; }
  }
  .paper-only { display: none; }
  .pocket .figures { font-size: var(--small); }
  .beyond td:first-of-type { color: var(--bad); }
  /* Takes no room, so that decimals stay below each other. */
  .flag { font-size: 0.7em; display: inline-block; inline-size: 0; text-indent: 0.1em; }
  .verdict { margin: var(--space-2) 0; }
  .verdict.exceeds { color: var(--bad); font-weight: 600; }
  .verdict.exceeds::before { content: '▲ '; content: '▲ '/''; }
  .paper .coefficients { font-size: var(--medium); white-space: pre-wrap; }
  .correctors { inline-size: 100%; margin-block: var(--space-2); table-layout: fixed; }
  .correctors th:first-child { inline-size: 34%; }
  .remarks { margin: var(--space-2) 0; }
  .pocket .signatures { margin-block-start: var(--space-6); }
  .paper .standing { margin-block: var(--space-2) 0; border: 0; padding: 0; }
  @media print {
    h2, .columns > .fields, .headline { display: none; }
    .paper { break-inside: avoid; --small: 0.86em; border: 0; padding: 0; max-inline-size: none; font-size: 9.5pt; background: none; }
    .paper-only { display: block; }
    .frame .paper.a4 .halves { grid-template-columns: 1fr 1fr; gap: 0 2rem; }
    .frame .paper.pocket .halves { grid-template-columns: 1fr 1fr; gap: 0 0.5rem; }
    .frame .particulars { grid-template-columns: repeat(4, 1fr); }
    .frame .pocket .particulars { grid-template-columns: 1fr 1fr; }
    .paper .deviation-chart { inline-size: 58%; margin: 0 auto; }
    .paper h3 { margin-block-end: 1.5mm; }
    .paper p, .paper dl { margin-block: 1mm; }
    .paper .cautions li { padding-block: 0; font-size: 8.5pt; }
    .frame .coefficients { font-size: 9pt; }
    .frame .particulars { margin-block-end: 2mm; }
    .correctors th, .correctors td { padding-block: 0.2mm; }
    .frame .correctors { margin-block: 1.5mm; font-size: 9pt; }
    .paper .figures { font-size: 9pt; line-height: 1.28; }
    .paper .figures th, .paper .figures td { padding-block: 0; padding-inline-start: 0.45em; }
    .paper.pocket { inline-size: 105mm; max-inline-size: none; min-block-size: 148mm; border: 0.2mm dashed #777777; padding: 5mm; font-size: 9pt; }
    .paper.pocket .figures { font-size: 8.5pt; line-height: 1.28; }
    .paper.pocket.dense .figures { font-size: 7.5pt; line-height: 1.08; }
    .paper.pocket h3 { font-size: 11pt; margin-block-end: 0.5mm; }
    .paper.pocket .particulars { margin-block-end: 1mm; gap: 0 3mm; line-height: 1.25; }
    .paper.pocket .figures thead th { font-size: 6.5pt; }
    .paper.pocket .standing { font-size: 6.5pt; margin-block: 1.5mm 0; }
    .pocket .signatures { margin-block-start: 7mm; }
    .correctors, .halves, .particulars { break-inside: avoid; }
  }
`;
