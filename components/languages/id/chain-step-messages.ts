import type { Catalogue } from '../../shared/catalogue.js';

export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': 'Deviasi yang diberikan',
  'step.chain.deviation-by-compass': 'Deviasi untuk haluan pedoman kapal',
  'step.chain.deviation-by-magnetic': 'Deviasi untuk haluan magnetis kapal, dengan daftar dikerjakan terbalik',
  'step.chain.magnetic-from-compass': 'Magnetis: pedoman dan deviasi',
  'step.chain.true-from-magnetic': 'Sejati: magnetis dan variasi',
  'step.chain.gyro-from-true': 'Gasing: sejati dikurangi kesalahan gasing',
  'step.chain.true-from-gyro': 'Sejati: gasing dan kesalahan gasing',
  'step.chain.magnetic-from-true': 'Magnetis: sejati dikurangi variasi',
  'step.chain.compass-from-magnetic': 'Pedoman: magnetis dikurangi deviasi',
};
