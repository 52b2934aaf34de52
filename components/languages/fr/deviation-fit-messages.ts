import type { Catalogue } from '../../shared/catalogue.js';

export const deviationFitMessages: Catalogue = {
  'caution.no-readings': 'Il n’y a pas de lectures.',
  'caution.too-few-readings': 'Caps relevés : {count}. C’est peu ; on en prend au moins huit.',
  'caution.too-few-to-find-slips': 'Avec {count} caps, une erreur de quelques degrés à l’un d’eux ne se découvre pas.',
  'caution.heading-twice': 'Le cap {heading} a été pris plus d’une fois : les lectures diffèrent de {apart}.',
  'caution.no-fit': 'Aucune courbe ne passe par ces lectures.',
  'caution.not-determined': 'Les caps pris ne déterminent pas {coefficients}.',
  'caution.suspect-readings': 'Lectures qui ne s’accordent pas avec les autres : {count}. Les revoir.',
  'caution.exact-fit-better': 'La série de cinq termes se trompe de {difference} au {heading} : prendre les coefficients exacts.',
  'caution.beyond-approximate': 'Des déviations de {largest} dépassent les {limit} jusqu’où vaut la série de cinq termes : prendre les coefficients exacts.',
  'caution.constant-curve': 'Les lectures ne diffèrent que d’une constante : vérifier la ligne de foi, l’alidade, la déclinaison magnétique et le gyrocompas.',
  'caution.scatter-exceeds-doubt': 'Les lectures se dispersent plus que l’incertitude qu’on leur attribue.',
  'caution.reversed-naming': 'Ces lectures sont l’ancien tableau, est et ouest échangés : les noms ont-ils été inversés ?',
};
