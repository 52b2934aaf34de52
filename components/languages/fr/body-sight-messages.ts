import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'la position',
  'doubt.time': 'l’heure',
  'accepted.doubt.s': 'Admis : 0 à 600 s, un écart type.',
  'accepted.doubt.M': 'Admis : 0 à 60 M, un écart type.',
  'caution.other-side': 'Une variation de {error} met l’astre de l’autre côté du compas : vérifier le relèvement, l’astre et l’heure.',
  'caution.lost-in-daylight': 'À cette heure le Soleil est à {sun} de hauteur : dans cette lumière {body} ne se voit pas. Vérifier la date, l’heure et l’astre.',
  'caution.lost-beside-sun': 'À cette heure la Lune est si près du Soleil qu’elle ne se voit pas. Vérifier la date, l’heure et l’astre.',
  'caution.gyro-error-large': 'Une variation du gyro de {error} est forte : vérifier l’astre, l’heure et le gyrocompas, réglages de vitesse et de latitude compris.',
  'caution.far-from-card': 'La déviation diffère du tableau de {difference}, bien plus que l’incertitude de ± {doubt} : vérifier l’astre, l’heure et le compas, puis le tableau.',
  'caution.beyond-doubt-of-card': 'La déviation diffère du tableau de {difference}, plus de deux fois l’incertitude de ± {doubt}. Faire une seconde observation.',
  'caution.within-doubt-of-card': 'La différence avec le tableau, {difference}, tient dans l’incertitude d’une observation (± {doubt}).',
  'caution.deviation-large': 'Une déviation de {deviation} est forte pour un compas compensé : vérifier l’astre, l’heure et le compas.',
};
