import type { Catalogue } from '../../shared/catalogue.js';

export const lmsMessages: Catalogue = {
  'lms.none': 'Hier ist keine Lernplattform: Alles geht, nichts wird gemeldet.',
  'lms.opening': 'Die Lernplattform wird gefragt …',
  'lms.open': 'Ergebnisse werden nach jeder Antwort der Lernplattform gemeldet.',
  'lms.review': 'Zur Ansicht geöffnet: Der Lernplattform wird nichts gemeldet.',
  'lms.refused': 'Die Lernplattform eröffnete keine Sitzung: Alles geht, nichts wird gemeldet.',
  'lms.trouble': 'Die Lernplattform nahm die letzte Meldung nicht an. Die nächste enthält wieder alles.',
  'lms.finished': 'Die Sitzung mit der Lernplattform ist beendet. Um mehr zu melden, die Lektion dort neu öffnen.',
};
