import { css } from 'lit';

export const transitStyles = css`
  .line-fields + .line-fields { border-block-start: 1px solid var(--line); padding-block-start: var(--space-3); }
  fieldset.mark { margin-block-end: 0; }
  .plan { max-inline-size: 27rem; margin-block: var(--space-3) var(--space-2); }
  .plan text { paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
  .hint.why { margin-block-end: var(--space-2); }
  .facts { margin-block: var(--space-2); }
  .close .facts + * { --cell: var(--space-2); }
  tr.odd td { color: var(--bad); }
`;
