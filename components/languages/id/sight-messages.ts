import type { Catalogue } from '../../shared/catalogue.js';

export const sightMessages: Catalogue = {
  'sight.latitude': 'Lintang',
  'sight.longitude': 'Bujur',
  'sight.date': 'Tanggal UTC',
  'sight.time': 'Waktu UTC',
  'sight.heightOfEye': 'Tinggi mata',
  'sight.compass': 'Pedoman',
  'sight.compass.magnetic': 'magnet',
  'sight.compass.gyro': 'gasing',
  'sight.heading': 'Haluan pedoman (Hp)',
  'sight.heading.gyro': 'Haluan gasing',
  'sight.variation': 'Variasi',
  'sight.variation.model': 'dari model',
  'sight.cardDeviation': 'Deviasi daftar',
  'sight.cardDeviation.none': 'tanpa daftar',
};
