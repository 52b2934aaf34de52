import type { Catalogue } from '../../shared/catalogue.js';

export const transitStepMessages: Catalogue = {
  'step.transit.longitude': 'Différence de longitude, en minutes, positive vers l’est',
  'step.transit.parts': 'Différence de latitudes croissantes sur WGS 84, positive vers le nord',
  'step.transit.rhumb': 'Relèvement sur la carte de Mercator, mis dans son quadrant',
  'step.transit.true.two-marks': 'Relèvement vrai le long de la visuelle (géodésique sur WGS 84), là où elle passe le navire si sa position est connue',
  'step.transit.true.charted': 'Relèvement vrai porté sur la carte',
};
