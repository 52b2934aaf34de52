import type { Catalogue } from '../../shared/catalogue.js';

export const sightMessages: Catalogue = {
  'sight.latitude': 'Latitude',
  'sight.longitude': 'Longitude',
  'sight.date': 'Date UTC',
  'sight.time': 'Heure UTC',
  'sight.heightOfEye': 'Hauteur de l’œil',
  'sight.compass': 'Compas',
  'sight.compass.magnetic': 'magnétique',
  'sight.compass.gyro': 'gyrocompas',
  'sight.heading': 'Cap compas (Cc)',
  'sight.heading.gyro': 'Cap gyro',
  'sight.variation': 'Déclinaison magnétique',
  'sight.variation.model': 'du modèle',
  'sight.cardDeviation': 'Déviation d’après tableau',
  'sight.cardDeviation.none': 'pas de tableau',
};
