import type { Catalogue } from '../../shared/catalogue.js';

export const sightMessages: Catalogue = {
  'sight.latitude': 'Breite',
  'sight.longitude': 'Länge',
  'sight.date': 'Datum UTC',
  'sight.time': 'Uhrzeit UTC',
  'sight.heightOfEye': 'Augeshöhe',
  'sight.compass': 'Kompass',
  'sight.compass.magnetic': 'Magnetkompass',
  'sight.compass.gyro': 'Kreiselkompass',
  'sight.heading': 'Anliegender MgK',
  'sight.heading.gyro': 'Anliegender KrK',
  'sight.variation': 'Missweisung',
  'sight.variation.model': 'nach dem Modell',
  'sight.cardDeviation': 'Ablenkung laut Tafel',
  'sight.cardDeviation.none': 'keine Tafel',
};
