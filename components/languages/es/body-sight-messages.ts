import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'la situación',
  'doubt.time': 'la hora',
  'accepted.doubt.s': 'Se admite: 0 a 600\u00a0s, una desviación típica.',
  'accepted.doubt.M': 'Se admite: 0 a 60\u00a0M, una desviación típica.',
  'caution.time-by-hours': 'El astro estaría donde se vio si la hora se cambiara en {hours}\u00a0h: ¿es hora legal, no UTC (descripción de zona {hours}), o está mal la hora anotada?',
  'caution.longitude-turned': 'El astro estaría donde se vio si la longitud fuera {longitude}: ¿se han confundido este y oeste?',
  'caution.latitude-turned': 'El astro estaría donde se vio si la latitud fuera {latitude}: ¿se han confundido norte y sur?',
  'caution.lost-in-daylight': 'A esta hora el Sol está a {sun} de altura: con esta luz no se ve {body}. Revisar la fecha, la hora y el astro.',
  'caution.lost-beside-sun': 'A esta hora {body} está demasiado cerca del Sol para verse. Revisar la fecha, la hora y el astro.',
};
