import { css } from 'lit';
import { errorColumnStyles } from './error-column-styles.js';

/** For every widget that shows `deviationChart` and its key, and deviations in columns. */
export const deviationChartStyles = css`
  ${errorColumnStyles}
  .deviation-chart { margin-block: var(--space-2); }
  .deviation-chart .suspect, .key .suspect { color: var(--bad); }
  .deviation-chart .struck, .key .struck { color: var(--soft); }
  .key { list-style: none; display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-4); margin: var(--space-2) 0; padding: 0; font-size: var(--small); color: var(--soft); }
  .key li { display: flex; align-items: center; gap: var(--space-2); }
  .key .swatch { inline-size: 28px; block-size: 12px; flex: none; }
`;
