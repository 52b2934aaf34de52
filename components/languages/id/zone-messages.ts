import type { Catalogue } from '../../shared/catalogue.js';

export const zoneMessages: Catalogue = {
  // unsure: no settled Indonesian name for the blackout zone of the magnetic model
  'caution.blackout-zone': 'Intensitas horizontal di sini di bawah 2\u00a0µT: zona terlarang, pedoman magnet tidak boleh dipakai.',
  // unsure: no settled Indonesian name for the caution zone of the magnetic model
  'caution.caution-zone': 'Intensitas horizontal di sini di bawah 6\u00a0µT: zona waspada, pedoman magnet lamban dan tidak dapat diandalkan.',
};
