import type { Catalogue } from '../../shared/catalogue.js';

export const bodyMessages: Catalogue = {
  'sight.body': 'Benda angkasa',
  'sight.bodies.solar': 'Matahari, Bulan, planet',
  'sight.bodies.stars': 'Bintang',
  'body.name.Sun': 'Matahari',
  'body.name.Moon': 'Bulan',
  'body.name.Venus': 'Venus',
  'body.name.Mars': 'Mars',
  'body.name.Jupiter': 'Jupiter',
  'body.name.Saturn': 'Saturnus',
  'body.Sun': 'Matahari',
  'body.Moon': 'Bulan',
};
