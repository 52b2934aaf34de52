import type { Catalogue } from '../../shared/catalogue.js';

export const bodyMessages: Catalogue = {
  'sight.body': '天体',
  'sight.bodies.solar': '太阳、月亮、行星',
  'sight.bodies.stars': '恒星',
  'body.name.Sun': '太阳',
  'body.name.Moon': '月亮',
  'body.name.Venus': '金星',
  'body.name.Mars': '火星',
  'body.name.Jupiter': '木星',
  'body.name.Saturn': '土星',
  'body.Sun': '太阳',
  'body.Moon': '月亮',
};
