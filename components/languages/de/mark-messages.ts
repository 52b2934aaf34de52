import type { Catalogue } from '../../shared/catalogue.js';

export const markMessages: Catalogue = {
  'transit.frontLatitude': 'Vordere Marke, Breite',
  'transit.frontLongitude': 'Vordere Marke, Länge',
  'transit.rearLatitude': 'Hintere Marke, Breite',
  'transit.rearLongitude': 'Hintere Marke, Länge',
  'transit.none.same-place': '{line}Es gibt keine Linie: Die zwei Orte sind derselbe.',
  'transit.none.pole': '{line}An einem Pol ist jede Richtung dieselbe: Es gibt keine Peilung.',
  'transit.none.two-ways': '{line}Diese Orte liegen auf der Erdkugel einander gegenüber: Positionen prüfen.',
  'caution.mark-beyond-sight': '{line}Eine Marke in {distance} Abstand ist nicht zu sehen: Positionen prüfen, N oder S, E oder W.',
};
