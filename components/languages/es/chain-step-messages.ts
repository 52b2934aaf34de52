import type { Catalogue } from '../../shared/catalogue.js';

export const chainStepMessages: Catalogue = {
  'step.chain.deviation-given': 'Desvío dado',
  'step.chain.deviation-by-compass': 'Desvío para el rumbo de aguja del buque',
  'step.chain.deviation-by-magnetic': 'Desvío para el rumbo magnético del buque, entrando en la tablilla a la inversa',
  'step.chain.magnetic-from-compass': 'Magnético: de aguja más desvío',
  'step.chain.true-from-magnetic': 'Verdadero: magnético más declinación magnética',
  'step.chain.gyro-from-true': 'Giroscópico: verdadero menos error del girocompás',
  'step.chain.true-from-gyro': 'Verdadero: giroscópico más error del girocompás',
  'step.chain.magnetic-from-true': 'Magnético: verdadero menos declinación magnética',
  'step.chain.compass-from-magnetic': 'De aguja: magnético menos desvío',
};
