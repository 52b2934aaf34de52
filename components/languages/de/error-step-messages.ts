import type { Catalogue } from '../../shared/catalogue.js';

export const errorStepMessages: Catalogue = {
  'symbol.card': 'Tafel',
  'symbol.chart': 'Karte',
  'step.error.compass': 'Fehlweisung: rechtweisend minus Kompass',
  'step.error.gyro': 'Kreiselfehlweisung: rechtweisend minus Kreisel',
  'step.variation.model': 'Missweisung nach dem World Magnetic Model',
  'step.variation.given': 'Missweisung wie angegeben',
  'step.error.deviation': 'Ablenkung: Fehlweisung minus Missweisung',
  'step.error.difference': 'Unterschied zur Ablenkungstafel',
};
