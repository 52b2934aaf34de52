import type { Catalogue } from '../../shared/catalogue.js';

export const drillStepMessages: Catalogue = {
  'step.drill.reciprocal': 'La misma línea vista desde la mar',
  'step.drill.chart-variation': 'El valor de la rosa y la variación anual de los años transcurridos, positivos al este',
  'step.drill.coefficient-A': 'A: la media de los ocho',
  'step.drill.coefficient-B': 'B: la mitad de este menos oeste',
  'step.drill.coefficient-C': 'C: la mitad de norte menos sur',
  'step.drill.coefficient-D': 'D: un cuarto, los cuadrantales con sus signos',
  'step.drill.coefficient-E': 'E: un cuarto, los cardinales con sus signos',
  'step.drill.deviation-from-coefficients': 'Desvío: A + B sin + C cos + D sin 2 + E cos 2 del rumbo de aguja',
  'step.drill.permanent': 'El magnetismo permanente actúa como uno partido por H',
  'step.drill.induced': 'El hierro dulce vertical actúa como Z partido por H',
  'step.drill.slope': 'La parte inducida: cómo varía H por B con Z',
  'step.drill.third-place': 'En el tercer lugar: H por B del primero, y el cambio de Z',
};
