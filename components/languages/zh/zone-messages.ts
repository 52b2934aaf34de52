import type { Catalogue } from '../../shared/catalogue.js';

export const zoneMessages: Catalogue = {
  // unsure: 盲区 for the blackout zone of the magnetic model; no official Chinese term was seen
  'caution.blackout-zone': '此处水平磁场小于2\u00a0µT：属盲区，不得使用磁罗经。',
  // unsure: 警示区 for the caution zone of the magnetic model; no official Chinese term was seen
  'caution.caution-zone': '此处水平磁场小于6\u00a0µT：属警示区，磁罗经迟钝且不可靠。',
};
