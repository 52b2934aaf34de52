import type { Catalogue } from './catalogue.js';

/** The lines between true, magnetic, compass and gyro, for the calculator and the exercises. */
export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': 'Deviation as given',
  'step.chain.deviation-by-compass': 'Deviation for the ship’s head by compass',
  'step.chain.deviation-by-magnetic': 'Deviation for the ship’s magnetic head, the card worked backwards',
  'step.chain.magnetic-from-compass': 'Magnetic: compass and deviation',
  'step.chain.true-from-magnetic': 'True: magnetic and variation',
  'step.chain.gyro-from-true': 'Gyro: true less gyro error',
  'step.chain.true-from-gyro': 'True: gyro and gyro error',
  'step.chain.magnetic-from-true': 'Magnetic: true less variation',
  'step.chain.compass-from-magnetic': 'Compass: magnetic less deviation',
};
