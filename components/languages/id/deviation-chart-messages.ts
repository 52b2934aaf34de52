import type { Catalogue } from '../../shared/catalogue.js';

export const deviationChartMessages: Catalogue = {
  'chart.observed': 'diamati',
  'chart.suspect': 'bacaan yang meragukan',
  'chart.struck': 'dicoret',
  'chart.band': 'tempat lengkung yang benar, 19 kali dari 20',
  'chart.limit': 'batas',
  'chart.summary': '{name}: dari {least} pada {leastOn} sampai {most} pada {mostOn}; {crossings}.',
  'chart.crossings': 'tanpa deviasi pada {headings}',
  'chart.crossings.none': 'tidak pernah tanpa deviasi',
};
