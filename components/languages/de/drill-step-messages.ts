import type { Catalogue } from '../../shared/catalogue.js';

export const drillStepMessages: Catalogue = {
  'step.drill.reciprocal': 'Dieselbe Linie, von See her gesehen',
  'step.drill.chart-variation': 'Wert der Rose und jährliche Änderung der vergangenen Jahre, Ost positiv',
  'step.drill.coefficient-A': 'A: das Mittel aller acht',
  'step.drill.coefficient-B': 'B: die Hälfte von Ost minus West',
  'step.drill.coefficient-C': 'C: die Hälfte von Nord minus Süd',
  // unsure: "Zwischenrichtungen" for NE, SE, SW, NW and "Hauptrichtungen" for N, E, S, W
  'step.drill.coefficient-D': 'D: ein Viertel, die Zwischenrichtungen mit ihren Vorzeichen',
  'step.drill.coefficient-E': 'E: ein Viertel, die Hauptrichtungen mit ihren Vorzeichen',
  'step.drill.deviation-from-coefficients': 'Ablenkung: A + B sin + C cos + D sin 2 + E cos 2 des MgK',
  'step.drill.permanent': 'Fester Magnetismus wirkt wie eins durch H',
  'step.drill.induced': 'Vertikales weiches Eisen wirkt wie Z durch H',
  'step.drill.slope': 'Der induzierte Anteil: wie sich H mal B mit Z ändert',
  'step.drill.third-place': 'Am dritten Ort: H mal B des ersten und die Änderung von Z',
};
