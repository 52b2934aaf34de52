import type { Catalogue } from '../../shared/catalogue.js';

export const bodyMessages: Catalogue = {
  'sight.body': 'Gestirn',
  'sight.bodies.solar': 'Sonne, Mond, Planeten',
  'sight.bodies.stars': 'Fixsterne',
  'body.name.Sun': 'Sonne',
  'body.name.Moon': 'Mond',
  'body.name.Venus': 'Venus',
  'body.name.Mars': 'Mars',
  'body.name.Jupiter': 'Jupiter',
  'body.name.Saturn': 'Saturn',
  'body.Sun': 'Sonne',
  'body.Moon': 'Mond',
};
