import type { DeviationCard } from '../deviation/deviation-card.js';
import { deviationByCard } from '../deviation/deviation-by-card.js';
import { completeDraft } from './complete-draft.js';
import type { EntryFields, MagneticCompass } from './entry.js';
import { readDraft } from './read-draft.js';
import type { DraftReading } from './read-draft.js';

/** The card's deviation for the head of the compass watched, where the draft brings none. */
function withCard(fields: EntryFields, watched: MagneticCompass, card: DeviationCard): EntryFields {
  const compass = fields.deviationOf ?? watched;
  const heading = compass === 'standard' ? fields.headingStandard : fields.headingSteering;
  if (fields.cardDeviation !== null || heading === null) return fields;
  return { ...fields, cardDeviation: deviationByCard(card, heading) };
}

/**
 * A draft of unknown origin made ready for the book: read, the card looked up, and what
 * follows worked out. Throws `RangeError` only for a bad card.
 */
export function prepareEntry(
  draft: unknown,
  { watched = 'standard', card = null }: { readonly watched?: MagneticCompass; readonly card?: DeviationCard | null } = {},
): DraftReading {
  const reading = readDraft(draft);
  if (!reading.ok) return reading;
  const { fields } = reading;
  const observation = (fields.replacement ?? fields.kind) === 'observation';
  // Worked-out values are brought to the decimals of the book.
  return readDraft(completeDraft(card && observation ? withCard(fields, watched, card) : fields, watched));
}
