import type { Catalogue } from '../../shared/catalogue.js';

export const markMessages: Catalogue = {
  'transit.frontLatitude': 'Amer antérieur, latitude',
  'transit.frontLongitude': 'Amer antérieur, longitude',
  'transit.rearLatitude': 'Amer postérieur, latitude',
  'transit.rearLongitude': 'Amer postérieur, longitude',
  'transit.none.same-place': '{line}Il n’y a pas de ligne : les deux lieux sont le même.',
  'transit.none.pole': '{line}À un pôle toutes les directions sont la même : il n’y a pas de relèvement.',
  'transit.none.two-ways': '{line}Ces lieux sont aux antipodes : vérifier les positions.',
  'caution.mark-beyond-sight': '{line}Un amer à {distance} ne peut être vu : vérifier les positions, N ou S, E ou W.',
};
