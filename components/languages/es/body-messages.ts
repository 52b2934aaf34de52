import type { Catalogue } from '../../shared/catalogue.js';

export const bodyMessages: Catalogue = {
  'sight.body': 'Astro',
  'sight.bodies.solar': 'Sol, Luna, planetas',
  'sight.bodies.stars': 'Estrellas',
  'body.name.Sun': 'Sol',
  'body.name.Moon': 'Luna',
  'body.name.Venus': 'Venus',
  'body.name.Mars': 'Marte',
  'body.name.Jupiter': 'Júpiter',
  'body.name.Saturn': 'Saturno',
  'body.Sun': 'el Sol',
  'body.Moon': 'la Luna',
};
