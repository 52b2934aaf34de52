import { css } from 'lit';

/** A text of many lines. To stand before the shared styles. */
export const longTextStyles = css`
  textarea {
    display: block; inline-size: 100%; resize: vertical; padding: var(--space-2); border: 1px solid var(--edge); border-radius: var(--radius);
    background: var(--raise); color: var(--ink); font: inherit; line-height: 1.35;
  }
  /* The browser's own grip is brighter at night than anything else. */
  textarea::-webkit-resizer { background: var(--raise); border: 0; border-block-end: 2px solid var(--edge); border-inline-end: 2px solid var(--edge); }
  @media print { textarea { resize: none; } }
  textarea:read-only { color: var(--soft); }
  textarea + .row { margin-block-start: var(--space-2); }
`;
