import { css } from 'lit';

/** Lines to sign on. */
export const signatureStyles = css`
  /* As long as their words ask for and there is room, else below each other with as much to write in. */
  .signatures { display: flex; flex-wrap: wrap; gap: var(--space-9) var(--space-6); margin-block-start: var(--space-9); }
  .signatures p { flex: auto; border-block-start: 1px solid var(--ink); margin: 0; padding-block-start: var(--space-half); font-size: var(--small); color: var(--soft); }
  @media print {
    .signatures { margin-block-start: 11mm; break-inside: avoid; }
  }
`;
