import type { Catalogue } from '../../shared/catalogue.js';

export const deviationTableMessages: Catalogue = {
  'table.given': 'Se muestra lo entregado por la página o el buque; lo que se escriba aquí tiene prioridad.',
  'table.how': 'Una línea por rumbo: rumbo de aguja y desvío. Pegar desde una hoja de cálculo o escribir, en cualquier orden.',
  'table.count': 'Rumbos leídos: {count}.',
  'table.title': 'Omitido por ser título: {title}',
  'table.line': 'Línea {line}, «{text}»:',
  'table.more': 'Otras líneas: {count}.',
  'accepted.table': 'Se admite, una por línea: 045 2,5W, o 045, tabulador y −2,5. Las cifras sin letra solo son E donde otras llevan signo menos.',
  'refusal.two-columns': 'Hacen falta un rumbo y un desvío.',
  'refusal.given-twice': 'Este rumbo tiene otro desvío más arriba.',
};
