import type { Catalogue } from '../../shared/catalogue.js';

export const drillStepMessages: Catalogue = {
  'step.drill.reciprocal': 'La même ligne vue du large',
  'step.drill.chart-variation': 'La valeur de la rose et le changement annuel des années passées, positifs vers l’est',
  'step.drill.coefficient-A': 'A : la moyenne des huit',
  'step.drill.coefficient-B': 'B : la moitié de est moins ouest',
  'step.drill.coefficient-C': 'C : la moitié de nord moins sud',
  'step.drill.coefficient-D': 'D : un quart, les intercardinaux avec leurs signes',
  'step.drill.coefficient-E': 'E : un quart, les cardinaux avec leurs signes',
  'step.drill.deviation-from-coefficients': 'Déviation : A + B sin + C cos + D sin 2 + E cos 2 du cap compas',
  'step.drill.permanent': 'Le magnétisme permanent agit comme un sur H',
  'step.drill.induced': 'Le fer doux vertical agit comme Z sur H',
  'step.drill.slope': 'La partie induite : comment H fois B change avec Z',
  'step.drill.third-place': 'Au troisième lieu : H fois B du premier, et le changement de Z',
};
