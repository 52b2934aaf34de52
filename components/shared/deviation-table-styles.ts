import { css } from 'lit';

/** For the field into which a table of deviations is typed. */
export const deviationTableStyles = css`
  .table-field textarea {
    display: block; inline-size: 100%; min-block-size: 6rem; resize: vertical; padding: 0.4rem 0.5rem; border: 1px solid var(--edge); border-radius: 3px;
    background: var(--raise); color: var(--ink); font: inherit; font-variant-numeric: inherit; tab-size: 8; line-height: 1.35;
  }
  .table-field textarea:read-only { color: var(--soft); }
  ul.problem { list-style: none; padding: 0; }
  ul.problem::before { content: none; }
  ul.problem li:not(:last-child)::before { content: '▲ '; }
`;
