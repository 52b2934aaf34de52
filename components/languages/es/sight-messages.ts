import type { Catalogue } from '../../shared/catalogue.js';

export const sightMessages: Catalogue = {
  'sight.latitude': 'Latitud',
  'sight.longitude': 'Longitud',
  'sight.date': 'Fecha UTC',
  'sight.time': 'Hora UTC',
  'sight.heightOfEye': 'Altura del observador',
  'sight.compass': 'Compás',
  'sight.compass.magnetic': 'magnético',
  'sight.compass.gyro': 'girocompás',
  'sight.heading': 'Rumbo de aguja (Ra)',
  'sight.heading.gyro': 'Rumbo giroscópico',
  'sight.variation': 'Declinación magnética',
  'sight.variation.model': 'del modelo',
  'sight.cardDeviation': 'Desvío según la tablilla',
  'sight.cardDeviation.none': 'sin tablilla',
};
