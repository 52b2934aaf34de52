import type { Catalogue } from '../../shared/catalogue.js';

export const deviationChartMessages: Catalogue = {
  'chart.observed': 'observado',
  'chart.suspect': 'lectura dudosa',
  'chart.struck': 'tachada',
  'chart.band': 'donde está la curva verdadera, 19 veces de 20',
  'chart.limit': 'límite',
  'chart.summary': '{name}: de {least} a {leastOn} hasta {most} a {mostOn}; {crossings}.',
  'chart.crossings': 'sin desvío a {headings}',
  'chart.crossings.none': 'con desvío a todos los rumbos',
};
