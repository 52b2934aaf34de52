import { css } from 'lit';

/**
 * A widget on paper: what was entered in short columns, then the answer and what explains it
 * over the whole width; nothing to press, no choice that was not made.
 */
export const printStyles = css`
  @media print {
    .frame.frame { padding: 0; font-size: 10.5pt; --answer: 24pt; --target: 0; --target-beside: 0; }
    button, .no-print { display: none; }
    .scroll { overflow: visible; }
    tr, li, h3, svg, figure, .field, fieldset, .pair, [part='doubt'] table { break-inside: avoid; }
    h2, h3, summary, caption { break-after: avoid; }
    th, td { padding-block: var(--space-half); }
    .frame .columns { display: block; }
    .columns > .fields { columns: 3; column-gap: var(--space-6); margin-block-end: var(--space-4); }
    .entry { border-color: #999; }
    .entry input, .entry select, .frame.frame .choices label { padding: 0; font-size: inherit; }
    .entry select { appearance: none; margin: 0; }
    .echo { font-size: 8.5pt; }
    .fields .pair { display: block; }
    .entry input { min-inline-size: 6.5rem; }
    .frame ::placeholder { color: transparent; }
    .frame math { font-size: 0.85em; }
    .hint { display: none; }
    .choices { outline: 0; border-block-end: 1px solid #999; margin: 0; }
    .frame .choices label:not(.chosen), .choices input { display: none; }
    details:not([open]) { display: none; }
    details > summary { list-style: none; color: var(--ink); font-weight: 600; padding-block: var(--space-2) 0; }
  }
`;
