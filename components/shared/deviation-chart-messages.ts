import type { Catalogue } from './catalogue.js';

/** English of the chart of deviations and its key. */
export const deviationChartMessages: Catalogue = {
  'chart.observed': 'observed',
  'chart.suspect': 'doubtful reading',
  'chart.struck': 'struck out',
  'chart.band': 'where the true curve lies, 19 times in 20',
  'chart.limit': 'limit',
  'chart.summary': '{name}: from {least} on {leastOn} to {most} on {mostOn}; {crossings}.',
  'chart.crossings': 'no deviation on {headings}',
  'chart.crossings.none': 'nowhere without deviation',
};
