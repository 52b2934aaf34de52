import type { Catalogue } from '../../shared/catalogue.js';

export const deviationChartMessages: Catalogue = {
  'chart.observed': 'observé',
  'chart.suspect': 'lecture douteuse',
  'chart.struck': 'rayée',
  'chart.band': 'où passe la vraie courbe, 19 fois sur 20',
  'chart.limit': 'limite',
  'chart.summary': '{name} : de {least} au {leastOn} à {most} au {mostOn} ; {crossings}.',
  'chart.crossings': 'déviation nulle au {headings}',
  'chart.crossings.none': 'nulle part sans déviation',
};
