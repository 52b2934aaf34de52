import { css } from 'lit';

/** For the field into which a table of deviations is typed. */
export const deviationTableStyles = css`
  .table-field textarea { tab-size: 8; }
  ul.problem { list-style: none; padding: 0; }
  ul.problem::before { content: none; }
  ul.problem li:not(:last-child)::before { content: '▲ '; content: '▲ '/''; }
`;
