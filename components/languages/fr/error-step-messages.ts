import type { Catalogue } from '../../shared/catalogue.js';

export const errorStepMessages: Catalogue = {
  'symbol.card': 'tableau',
  'symbol.chart': 'carte',
  'step.error.compass': 'Variation W : vrai moins compas',
  'step.error.gyro': 'Variation du gyro : vrai moins gyro',
  'step.variation.model': 'Déclinaison par le modèle magnétique mondial (WMM)',
  'step.variation.given': 'Déclinaison magnétique donnée',
  'step.error.deviation': 'Déviation : variation W moins déclinaison',
  'step.error.difference': 'Différence avec le tableau de déviations',
};
