import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { EntryDraft, MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import { prepareEntry } from '../../core/record/prepare-entry.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { fieldInWords } from './entry-text.js';

const worked = ['errorGyro', 'errorStandard', 'errorSteering', 'deviation', 'cardDeviation', 'difference'] as const;

/** What a draft would put in the book beyond what was typed, in words; empty while there is nothing to tell. */
export function previewText(host: LubberElement, draft: EntryDraft | null, by: { readonly watched: MagneticCompass; readonly card: DeviationCard | null }): string {
  if (!draft || (draft.replacement ?? draft.kind) !== 'observation') return '';
  const reading = prepareEntry({ ...draft, kind: 'observation', corrects: null, replacement: null }, by);
  if (!reading.ok) return '';
  const entry = reading.fields as RecordEntry;
  return worked
    .filter((name) => entry[name] !== null)
    .map((name) => `${host.t(`field.${name}`)} ${fieldInWords(host, entry, name)}`)
    .join(host.t('list.semicolon'));
}
