import type { Catalogue } from '../../shared/catalogue.js';

export const markMessages: Catalogue = {
  'transit.frontLatitude': 'Marca anterior, latitud',
  'transit.frontLongitude': 'Marca anterior, longitud',
  'transit.rearLatitude': 'Marca posterior, latitud',
  'transit.rearLongitude': 'Marca posterior, longitud',
  'transit.none.same-place': '{line}No hay línea: los dos lugares son el mismo.',
  'transit.none.pole': '{line}En un polo todas las direcciones son la misma: no hay demora.',
  'transit.none.two-ways': '{line}Estos lugares son antípodas: revisar las situaciones.',
  'caution.mark-beyond-sight': '{line}Una marca a {distance} no puede verse: revisar las situaciones, N o S, E o W.',
};
