import type { Catalogue } from '../../shared/catalogue.js';

export const deviationTableMessages: Catalogue = {
  'table.given': 'Ce qui est montré vient de la page ou du navire ; ce qui est saisi ici passe avant.',
  'table.how': 'Une ligne par cap : cap compas, puis déviation. Coller depuis un tableur ou saisir, dans n’importe quel ordre.',
  'table.count': 'Caps lus : {count}.',
  'table.title': 'Omis comme titre : {title}',
  'table.line': 'Ligne {line}, « {text} » :',
  'table.more': 'Autres lignes : {count}.',
  'accepted.table': 'Admis, une ligne chacun : 045 2,5W, ou 045, tabulation et −2,5. Des chiffres sans lettre ne sont E que si d’autres portent un moins.',
  'refusal.two-columns': 'Il faut un cap et une déviation.',
  'refusal.given-twice': 'Ce cap a une autre déviation plus haut.',
};
