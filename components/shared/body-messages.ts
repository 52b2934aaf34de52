import type { Catalogue } from './catalogue.js';

/** English of the bodies, for what is observed of one; stars keep the names of the almanac. */
export const bodyMessages: Catalogue = {
  'sight.body': 'Body',
  'sight.bodies.solar': 'Sun, Moon, planets',
  'sight.bodies.stars': 'Stars',
  'body.name.Sun': 'Sun',
  'body.name.Moon': 'Moon',
  'body.name.Venus': 'Venus',
  'body.name.Mars': 'Mars',
  'body.name.Jupiter': 'Jupiter',
  'body.name.Saturn': 'Saturn',
  'body.Sun': 'the Sun',
  'body.Moon': 'the Moon',
};
