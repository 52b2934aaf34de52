import type { Catalogue } from '../../shared/catalogue.js';

export const errorStepMessages: Catalogue = {
  'symbol.card': 'tablilla',
  'symbol.chart': 'carta',
  'step.error.compass': 'Corrección total: verdadera menos de aguja',
  'step.error.gyro': 'Error del girocompás: verdadera menos giroscópica',
  'step.variation.model': 'Declinación magnética por el Modelo Magnético Mundial',
  'step.variation.given': 'Declinación magnética dada',
  'step.error.deviation': 'Desvío: corrección total menos declinación magnética',
  'step.error.difference': 'Diferencia con la tablilla de desvíos',
};
