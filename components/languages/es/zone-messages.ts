import type { Catalogue } from '../../shared/catalogue.js';

export const zoneMessages: Catalogue = {
  // unsure: no settled Spanish name for the blackout zone of the World Magnetic Model
  'caution.blackout-zone': 'El campo horizontal es aquí inferior a 2\u00a0µT: zona de exclusión; no debe usarse el compás magnético.',
  // unsure: no settled Spanish name for the caution zone of the World Magnetic Model
  'caution.caution-zone': 'El campo horizontal es aquí inferior a 6\u00a0µT: zona de precaución; el compás magnético es lento y poco fiable.',
};
