import type { Catalogue } from '../../shared/catalogue.js';

export const deviationChartMessages: Catalogue = {
  'chart.observed': 'beobachtet',
  'chart.suspect': 'zweifelhafte Ablesung',
  'chart.struck': 'gestrichen',
  'chart.band': 'wo die wahre Kurve liegt, 19 von 20 Mal',
  'chart.limit': 'Grenze',
  'chart.summary': '{name}: von {least} auf {leastOn} bis {most} auf {mostOn}; {crossings}.',
  'chart.crossings': 'keine Ablenkung auf {headings}',
  'chart.crossings.none': 'nirgends ohne Ablenkung',
};
