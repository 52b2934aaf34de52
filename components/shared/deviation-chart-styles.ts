import { css } from 'lit';

/** For every widget that shows `deviationChart` and its key. */
export const deviationChartStyles = css`
  .deviation-chart { margin-block: 0.4rem; }
  .deviation-chart .suspect, .key .suspect { color: var(--bad); }
  .deviation-chart .struck, .key .struck { color: var(--soft); }
  .key { list-style: none; display: flex; flex-wrap: wrap; gap: 0.15rem 1.2rem; margin: 0 0 0.5rem; padding: 0; font-size: var(--small); color: var(--soft); }
  .key li { display: flex; align-items: center; gap: 0.4rem; }
  .key .swatch { inline-size: 28px; block-size: 12px; flex: none; }
`;
