import type { Catalogue } from '../../shared/catalogue.js';

export const zoneMessages: Catalogue = {
  // unsure: no settled French name for the blackout zone of the World Magnetic Model
  'caution.blackout-zone': 'Le champ horizontal est ici inférieur à 2 µT : zone d’exclusion, le compas magnétique ne doit pas servir.',
  // unsure: no settled French name for the caution zone of the World Magnetic Model
  'caution.caution-zone': 'Le champ horizontal est ici inférieur à 6 µT : zone de prudence, le compas magnétique est paresseux et peu fiable.',
};
