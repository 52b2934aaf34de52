import type { Catalogue } from '../../shared/catalogue.js';

export const transitStepMessages: Catalogue = {
  'step.transit.longitude': 'Diferencia de longitud, minutos, positiva al este',
  'step.transit.parts': 'Diferencia de partes meridionales en WGS 84, positiva al norte',
  'step.transit.rhumb': 'Demora en la carta Mercator, llevada a su cuadrante',
  'step.transit.true.two-marks': 'Demora verdadera a lo largo de la visual (geodésica en WGS 84), donde pasa por el buque si se conoce su situación',
  'step.transit.true.charted': 'Demora verdadera según la carta',
};
