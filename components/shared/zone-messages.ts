import type { Catalogue } from './catalogue.js';

/** English of where the compass is weak: for every widget that uses a variation of the model. */
export const zoneMessages: Catalogue = {
  'caution.blackout-zone': 'The horizontal field is below 2\u00a0µT here: blackout zone, a magnetic compass is not to be used.',
  'caution.caution-zone': 'The horizontal field is below 6\u00a0µT here: caution zone, a magnetic compass is sluggish and unreliable.',
};
