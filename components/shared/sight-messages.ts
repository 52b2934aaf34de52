import type { Catalogue } from './catalogue.js';

/** English of the fields that sights share, with the ship and the record. */
export const sightMessages: Catalogue = {
  'sight.latitude': 'Latitude',
  'sight.longitude': 'Longitude',
  'sight.date': 'UTC date',
  'sight.time': 'UTC time',
  'sight.heightOfEye': 'Height of eye',
  'sight.compass': 'Compass',
  'sight.compass.magnetic': 'magnetic',
  'sight.compass.gyro': 'gyro',
  'sight.heading': 'Ship’s head by compass',
  'sight.heading.gyro': 'Ship’s head by gyro',
  'sight.variation': 'Variation',
  'sight.variation.model': 'from the model',
  'sight.cardDeviation': 'Deviation by the card',
  'sight.cardDeviation.none': 'no card',
};
