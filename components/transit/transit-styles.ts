import { css } from 'lit';

export const transitStyles = css`
  .line-fields + .line-fields { border-block-start: 1px solid var(--line); padding-block-start: 0.75rem; }
  .line-head { justify-content: space-between; }
  .line-head h3 { margin-block: 0 0.25rem; }
  fieldset.mark { margin-block-end: 0; }
  .plan { max-inline-size: 27rem; margin-block: 0.9rem 0.4rem; }
  .plan text { paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
  .explanation th { white-space: nowrap; }
  .hint.why { margin-block-end: 0.5rem; }
  .facts { margin-block: 0.5rem; }
  tr.odd td { color: var(--bad); }
`;
