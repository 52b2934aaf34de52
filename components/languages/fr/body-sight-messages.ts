import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'la position',
  'doubt.time': 'l’heure',
  'accepted.doubt.s': 'Admis : 0 à 600 s, un écart type.',
  'accepted.doubt.M': 'Admis : 0 à 60 M, un écart type.',
  'caution.time-by-hours': 'L’astre serait où il a été vu si l’heure était changée de {hours} h : est-ce une heure du fuseau, non UTC (description de fuseau {hours}), ou l’heure est-elle fausse ?',
  'caution.longitude-turned': 'L’astre serait où il a été vu si la longitude était {longitude} : est et ouest ont-ils été confondus ?',
  'caution.latitude-turned': 'L’astre serait où il a été vu si la latitude était {latitude} : nord et sud ont-ils été confondus ?',
  'caution.lost-in-daylight': 'À cette heure le Soleil est à {sun} de hauteur : dans cette lumière {body} ne se voit pas. Vérifier la date, l’heure et l’astre.',
  'caution.lost-beside-sun': 'À cette heure {body} est trop près du Soleil pour être visible. Vérifier la date, l’heure et l’astre.',
};
