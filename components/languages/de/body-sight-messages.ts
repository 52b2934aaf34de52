import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'Schiffsort',
  'doubt.time': 'Uhrzeit',
  'accepted.doubt.s': 'Zulässig: 0 bis 600\u00a0s, eine Standardabweichung.',
  'accepted.doubt.M': 'Zulässig: 0 bis 60\u00a0M, eine Standardabweichung.',
  'caution.time-by-hours': 'Das Gestirn stünde, wo es gesehen wurde, wäre die Zeit um {hours}\u00a0h anders: Ist es Zonenzeit statt UTC (ZU {hours}), oder stimmt die Stunde nicht?',
  'caution.longitude-turned': 'Das Gestirn stünde, wo es gesehen wurde, wäre die Länge {longitude}: Wurden Ost und West verwechselt?',
  'caution.latitude-turned': 'Das Gestirn stünde, wo es gesehen wurde, wäre die Breite {latitude}: Wurden Nord und Süd verwechselt?',
  'caution.lost-in-daylight': 'Zu dieser Zeit steht die Sonne auf {sun}: Bei diesem Licht ist {body} nicht zu sehen. Datum, Uhrzeit und Gestirn prüfen.',
  'caution.lost-beside-sun': 'Zu dieser Zeit steht {body} zu nahe an der Sonne, um gesehen zu werden. Datum, Uhrzeit und Gestirn prüfen.',
};
