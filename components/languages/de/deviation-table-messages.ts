import type { Catalogue } from '../../shared/catalogue.js';

export const deviationTableMessages: Catalogue = {
  'table.given': 'Gezeigt ist, was die Seite oder das Schiff übergeben hat; was hier eingetragen wird, geht vor.',
  'table.how': 'Je Kurs eine Zeile: Magnetkompasskurs, dann Ablenkung. Aus einer Tabellenkalkulation einfügen oder eintippen, in beliebiger Folge.',
  'table.count': 'Gelesene Kurse: {count}.',
  'table.title': 'Als Überschrift ausgelassen: {title}',
  'table.line': 'Zeile {line}, „{text}“:',
  'table.more': 'Weitere Zeilen: {count}.',
  'accepted.table': 'Zulässig, je Zeile: 045 2,5W, oder 045, Tabulator und −2,5. Zahlen ohne Buchstaben sind nur dann Ost, wenn andere ein Minus tragen.',
  'refusal.two-columns': 'Kurs und Ablenkung sind nötig.',
  'refusal.given-twice': 'Dieser Kurs hat oben eine andere Ablenkung.',
};
