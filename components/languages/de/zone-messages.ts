import type { Catalogue } from '../../shared/catalogue.js';

export const zoneMessages: Catalogue = {
  // unsure: "Sperrzone" for the blackout zone of the magnetic model; no settled German name was seen
  'caution.blackout-zone': 'Das Horizontalfeld ist hier schwächer als 2\u00a0µT: Sperrzone, Magnetkompass nicht verwenden.',
  // unsure: "Warnzone" for the caution zone of the magnetic model; no settled German name was seen
  'caution.caution-zone': 'Das Horizontalfeld ist hier schwächer als 6\u00a0µT: Warnzone, der Magnetkompass ist träge und unzuverlässig.',
};
