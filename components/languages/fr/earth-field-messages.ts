import type { Catalogue } from '../../shared/catalogue.js';

export const earthFieldMessages: Catalogue = {
  'earth.elements': 'Le champ terrestre ici',
  'earth.element': 'élément',
  'earth.value': 'valeur',
  'earth.sigma': '1 sigma',
  'earth.change': 'par an',
  'earth.variation': 'Déclinaison magnétique',
  'earth.inclination': 'Inclinaison I, + bas',
  'earth.h': 'Horizontale H',
  'earth.z': 'Verticale Z, + bas',
  'earth.f': 'Totale F',
  'earth.none': 'aucune',
  'earth.sigma.note': 'Un écart type de ce qu’on peut rencontrer en mer : l’incertitude propre du modèle, les roches du fond et des jours calmes ; sans les orages magnétiques ni les épaves.',
  'earth.outside': 'Les modèles magnétiques valent du {from} au {until} inclus : aucun ne donne le champ à cette date.',
  'earth.outside.model': '{model} vaut du {from} au {until} inclus : il ne donne pas le champ à cette date.',
  'earth.outside.take': 'Prendre le 1er janvier {year}',
  'caution.dip-pole': 'Le champ est ici vertical : aucune direction n’est le nord magnétique et il n’y a pas de déclinaison magnétique.',
  'caution.geographic-pole': 'Au pôle, la déclinaison magnétique se compte du méridien de {longitude} : tout autre en donne une autre.',
};
