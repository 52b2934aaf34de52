import type { Catalogue } from '../../shared/catalogue.js';

export const deviationFitMessages: Catalogue = {
  'caution.no-readings': 'No hay lecturas.',
  'caution.too-few-readings': 'Rumbos tomados: {count}. Son pocos; se toman al menos ocho.',
  'caution.too-few-to-find-slips': 'Con {count} rumbos no se descubre un error de unos grados en uno de ellos.',
  'caution.heading-twice': 'El rumbo {heading} se tomó más de una vez: las lecturas difieren en {apart}.',
  'caution.no-fit': 'No se puede trazar ninguna curva por estas lecturas.',
  'caution.not-determined': 'Los rumbos tomados no determinan {coefficients}.',
  'caution.suspect-readings': 'Lecturas que no concuerdan con las demás: {count}. Conviene revisarlas.',
  'caution.exact-fit-better': 'La serie de cinco términos falla en {difference} a {heading}: usar los coeficientes exactos.',
  'caution.beyond-approximate': 'Desvíos de {largest} superan los {limit} hasta los que vale la serie de cinco términos: usar los coeficientes exactos.',
  'caution.constant-curve': 'Las lecturas solo difieren en una constante: revisar la línea de fe, la alidada, la declinación magnética y el girocompás.',
  'caution.scatter-exceeds-doubt': 'Las lecturas se dispersan más que la incertidumbre que se les atribuye.',
  'caution.reversed-naming': 'Estas lecturas son la tablilla antigua con este y oeste cambiados: ¿se ha invertido el nombre?',
};
