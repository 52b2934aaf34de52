import type { Catalogue } from '../../shared/catalogue.js';

export const errorStepMessages: Catalogue = {
  'symbol.card': 'daftar',
  'symbol.chart': 'peta',
  'step.error.compass': 'Sembir: sejati dikurangi pedoman',
  'step.error.gyro': 'Kesalahan gasing: sejati dikurangi gasing',
  'step.variation.model': 'Variasi menurut World Magnetic Model',
  'step.variation.given': 'Variasi yang diberikan',
  'step.error.deviation': 'Deviasi: sembir dikurangi variasi',
  'step.error.difference': 'Selisih dengan daftar deviasi',
};
