import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'Schiffsort',
  'doubt.time': 'Uhrzeit',
  'accepted.doubt.s': 'Zulässig: 0 bis 600 s, eine Standardabweichung.',
  'accepted.doubt.M': 'Zulässig: 0 bis 60 M, eine Standardabweichung.',
  'caution.other-side': 'Eine Fehlweisung von {error} setzt das Gestirn auf die andere Seite der Rose: Peilung, Gestirn und Uhrzeit prüfen.',
  'caution.lost-in-daylight': 'Zu dieser Zeit steht die Sonne auf {sun}: Bei diesem Licht ist {body} nicht zu sehen. Datum, Uhrzeit und Gestirn prüfen.',
  'caution.lost-beside-sun': 'Zu dieser Zeit steht der Mond so nahe bei der Sonne, dass er nicht zu sehen ist. Datum, Uhrzeit und Gestirn prüfen.',
  'caution.gyro-error-large': 'Eine Kreiselfehlweisung von {error} ist groß: Gestirn, Uhrzeit und Kreisel samt Fahrt- und Breiteneinstellung prüfen.',
  'caution.far-from-card': 'Die Ablenkung weicht um {difference} von der Tafel ab, weit mehr als die Unsicherheit von ± {doubt}: Gestirn, Uhrzeit und Kompass prüfen, dann die Tafel.',
  'caution.beyond-doubt-of-card': 'Die Ablenkung weicht um {difference} von der Tafel ab, mehr als das Doppelte der Unsicherheit von ± {doubt}. Eine zweite Beobachtung nehmen.',
  'caution.within-doubt-of-card': 'Der Unterschied zur Tafel, {difference}, liegt in der Unsicherheit einer Beobachtung (± {doubt}).',
  'caution.deviation-large': 'Eine Ablenkung von {deviation} ist für einen kompensierten Kompass groß: Gestirn, Uhrzeit und Kompass prüfen.',
};
