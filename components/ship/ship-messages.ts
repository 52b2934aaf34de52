import type { Catalogue } from '../shared/catalogue.js';
import { deviationCardMessages } from '../shared/deviation-card-messages.js';
import { deviationTableMessages } from '../shared/deviation-table-messages.js';
import { sightMessages } from '../shared/sight-messages.js';

export const shipMessages: Catalogue = {
  ...sightMessages,
  ...deviationCardMessages,
  ...deviationTableMessages,
  'ship.title': 'Ship',
  'ship.unnamed': 'Ship',
  'ship.name': 'Name of the ship',
  'ship.compassName': 'Compass',
  'ship.place.none': 'no position',
  'ship.time.none': 'no time',
  'ship.card.none': 'no deviation card',
  'ship.card.table': 'deviation card of {count} headings',
  'ship.card.coefficients': 'deviation card by coefficients',
  'ship.edit': 'Place, time, compass and card for all below',
  'ship.card': 'Deviation card: heading and deviation on each line',
  'ship.card.taken': 'A card of {count} headings is in use.',
  'ship.card.made': 'The card in use was made by a swing; a table typed here takes its place.',
  'ship.file': 'Keep or bring',
  'ship.file.hint': 'The ship as text: copy it to keep it, or paste one here and take it over.',
  'ship.file.label': 'Ship as text',
  'ship.file.write': 'Write',
  'ship.file.read': 'Take over',
  'ship.file.written': 'The ship as it stands is written below.',
  'ship.file.taken': 'The ship has been taken over.',
  'ship.file.not-json': 'This is not a ship’s text: it is no JSON.',
  'ship.file.not-a-ship': 'This is not a ship’s text.',
  'ship.file.unknown-version': 'This text is of version {where}; version 1 is understood.',
  'ship.file.not-a-text': 'In this text {where} is no text.',
  'ship.file.not-a-card': 'In this text the card cannot be read, at {where}.',
  'ship.summary': '{place} · {time} · {card}',
};
