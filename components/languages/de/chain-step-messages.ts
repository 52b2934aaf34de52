import type { Catalogue } from '../../shared/catalogue.js';

export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': 'Ablenkung wie angegeben',
  'step.chain.deviation-by-compass': 'Ablenkung für den anliegenden MgK',
  'step.chain.deviation-by-magnetic': 'Ablenkung für den anliegenden mwK, Tafel rückwärts',
  'step.chain.magnetic-from-compass': 'Missweisend: Kompass und Ablenkung',
  'step.chain.true-from-magnetic': 'Rechtweisend: missweisend und Missweisung',
  'step.chain.gyro-from-true': 'Kreisel: rechtweisend minus Kreiselfehlweisung',
  'step.chain.true-from-gyro': 'Rechtweisend: Kreisel und Kreiselfehlweisung',
  'step.chain.magnetic-from-true': 'Missweisend: rechtweisend minus Missweisung',
  'step.chain.compass-from-magnetic': 'Kompass: missweisend minus Ablenkung',
};
