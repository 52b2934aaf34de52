import type { Catalogue } from './catalogue.js';

/** English of the last lines of every working: the error and what it consists of. */
export const errorStepMessages: Catalogue = {
  'symbol.card': 'card',
  'symbol.chart': 'chart',
  'step.error.compass': 'Compass error: true less compass',
  'step.error.gyro': 'Gyro error: true less gyro',
  'step.variation.model': 'Variation by the World Magnetic Model',
  'step.variation.given': 'Variation as given',
  'step.error.deviation': 'Deviation: error less variation',
  'step.error.difference': 'Difference from the deviation card',
};
