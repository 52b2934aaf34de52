import type { Catalogue } from '../../shared/catalogue.js';

export const bodyMessages: Catalogue = {
  'sight.body': 'Astre',
  'sight.bodies.solar': 'Soleil, Lune, planètes',
  'sight.bodies.stars': 'Étoiles',
  'body.name.Sun': 'Soleil',
  'body.name.Moon': 'Lune',
  'body.name.Venus': 'Vénus',
  'body.name.Mars': 'Mars',
  'body.name.Jupiter': 'Jupiter',
  'body.name.Saturn': 'Saturne',
  'body.Sun': 'le Soleil',
  'body.Moon': 'la Lune',
};
