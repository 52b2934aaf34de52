import type { Catalogue } from '../../shared/catalogue.js';

export const transitStepMessages: Catalogue = {
  'step.transit.longitude': 'Längenunterschied in Minuten, Ost positiv',
  'step.transit.parts': 'Vergrößerter Breitenunterschied auf WGS 84, Nord positiv',
  'step.transit.rhumb': 'Peilung in der Merkatorkarte, in ihren Quadranten gesetzt',
  'step.transit.true.two-marks': 'Rechtweisende Peilung längs der Sichtlinie (Geodäte auf WGS 84), am Schiff, wenn sein Ort bekannt ist',
  'step.transit.true.charted': 'Rechtweisende Peilung laut Seekarte',
};
