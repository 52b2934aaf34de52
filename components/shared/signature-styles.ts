import { css } from 'lit';

/** Lines to sign on. */
export const signatureStyles = css`
  .signatures { display: grid; grid-template-columns: 2fr 1.4fr 1fr; gap: 0 var(--space-6); margin-block-start: var(--space-9); }
  .signatures p { border-block-start: 1px solid var(--ink); margin: 0; padding-block-start: var(--space-half); font-size: var(--small); color: var(--soft); }
  @media print {
    .signatures { margin-block-start: 11mm; break-inside: avoid; }
  }
`;
