import type { Catalogue } from '../../shared/catalogue.js';

export const transitStepMessages: Catalogue = {
  'step.transit.longitude': 'Selisih bujur, menit, timur positif',
  // unsure: "lintang bertumbuh" for meridional parts
  'step.transit.parts': 'Selisih lintang bertumbuh pada WGS 84, utara positif',
  'step.transit.rhumb': 'Baringan di peta Mercator, ditempatkan dalam kuadrannya',
  'step.transit.true.two-marks': 'Baringan sejati sepanjang garis pandang (geodesik pada WGS 84), di tempat garis itu melewati kapal bila posisinya diketahui',
  'step.transit.true.charted': 'Baringan sejati menurut peta',
};
