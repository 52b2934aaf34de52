import { css } from 'lit';

export const curveStyles = css`
  /* Under the scale of the picture, which no language mirrors. */
  .slider { direction: ltr; padding-inline: 50px 10px; }
  .readout { display: block; min-block-size: 3em; margin: var(--space-1) 0 var(--space-3); }
  figure { margin: 0; }
  .folded:not(:focus-within) { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
  .figures { margin-block: var(--space-2) var(--space-4); }
  .figures tbody tr:nth-child(6n) > * { border-block-end-color: var(--edge); }
  svg.diagonal { overflow: hidden; max-inline-size: 26rem; margin-block: var(--space-2); }
  .diagonal line.by-compass { stroke: var(--edge); stroke-dasharray: 1 4; }
  .diagonal line.by-magnetic { stroke: var(--line); }
  .diagonal .figure { paint-order: stroke; stroke: var(--paper); stroke-width: 4px; }
  .diagonal .walk { stroke: var(--ink); stroke-width: 2; }
  @media print {
    .folded.folded:not(:focus-within) { position: static; inline-size: auto; block-size: auto; clip-path: none; }
    .slider { display: none; }
    .fields { display: none; }
    .headline { break-after: avoid; }
    .figures { font-size: 9pt; line-height: 1.2; }
    .figures th, .figures td { padding-block: 0; }
  }
`;
