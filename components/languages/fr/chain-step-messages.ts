import type { Catalogue } from '../../shared/catalogue.js';

export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': 'Déviation donnée',
  'step.chain.deviation-by-compass': 'Déviation pour le cap compas du navire',
  'step.chain.deviation-by-magnetic': 'Déviation pour le cap magnétique du navire, tableau pris à rebours',
  'step.chain.magnetic-from-compass': 'Magnétique : compas et déviation',
  'step.chain.true-from-magnetic': 'Vrai : magnétique et déclinaison',
  'step.chain.gyro-from-true': 'Gyro : vrai moins variation du gyro',
  'step.chain.true-from-gyro': 'Vrai : gyro et variation du gyro',
  'step.chain.magnetic-from-true': 'Magnétique : vrai moins déclinaison',
  'step.chain.compass-from-magnetic': 'Compas : magnétique moins déviation',
};
