import type { Catalogue } from '../../shared/catalogue.js';

export const deviationFitMessages: Catalogue = {
  'caution.no-readings': 'Es gibt keine Ablesungen.',
  'caution.too-few-readings': 'Genommene Kurse: {count}. Das ist wenig; man nimmt mindestens acht.',
  'caution.too-few-to-find-slips': 'Bei {count} Kursen ist ein Versehen von einigen Grad auf einem davon nicht zu finden.',
  'caution.heading-twice': 'Der Kurs {heading} wurde mehr als einmal genommen: Die Ablesungen liegen {apart} auseinander.',
  'caution.no-fit': 'Durch diese Ablesungen lässt sich keine Kurve legen.',
  'caution.not-determined': 'Die genommenen Kurse bestimmen {coefficients} nicht.',
  'caution.suspect-readings': 'Ablesungen, die nicht zu den übrigen passen: {count}. Noch einmal ansehen.',
  'caution.exact-fit-better': 'Die fünfgliedrige Reihe irrt um {difference} auf {heading}: die exakten Koeffizienten nehmen.',
  'caution.beyond-approximate': 'Ablenkungen von {largest} liegen über den {limit}, bis zu denen die fünfgliedrige Reihe taugt: die exakten Koeffizienten nehmen.',
  'caution.constant-curve': 'Die Ablesungen unterscheiden sich nur um eine Konstante: Steuerstrich, Peilaufsatz, Missweisung und Kreisel prüfen.',
  'caution.scatter-exceeds-doubt': 'Die Ablesungen streuen mehr als ihre angenommene Unsicherheit.',
  'caution.reversed-naming': 'Diese Ablesungen sind die alte Tafel mit Ost und West vertauscht: Wurden die Namen verkehrt?',
};
