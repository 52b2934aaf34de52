import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'la situación',
  'doubt.time': 'la hora',
  'accepted.doubt.s': 'Se admite: 0 a 600 s, una desviación típica.',
  'accepted.doubt.M': 'Se admite: 0 a 60 M, una desviación típica.',
  'caution.other-side': 'Una corrección de {error} pone el astro al otro lado del compás: revisar la demora, el astro y la hora.',
  'caution.lost-in-daylight': 'A esta hora el Sol está a {sun} de altura: con esta luz no se ve {body}. Revisar la fecha, la hora y el astro.',
  'caution.lost-beside-sun': 'A esta hora la Luna está tan cerca del Sol que no se ve. Revisar la fecha, la hora y el astro.',
  'caution.gyro-error-large': 'Un error del girocompás de {error} es grande: revisar el astro, la hora y el girocompás con sus ajustes de velocidad y latitud.',
  'caution.far-from-card': 'El desvío difiere de la tablilla en {difference}, mucho más que la incertidumbre de ± {doubt}: revisar el astro, la hora y el compás, y después la tablilla.',
  'caution.beyond-doubt-of-card': 'El desvío difiere de la tablilla en {difference}, más del doble de la incertidumbre de ± {doubt}. Hacer otra observación.',
  'caution.within-doubt-of-card': 'La diferencia con la tablilla, {difference}, cabe en la incertidumbre de una observación (± {doubt}).',
  'caution.deviation-large': 'Un desvío de {deviation} es grande para un compás compensado: revisar el astro, la hora y el compás.',
};
