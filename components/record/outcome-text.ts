import type { RecordEntry } from '../../core/record/entry.js';
import { entryMarks } from '../../core/record/entry-marks.js';
import type { DraftProblem } from '../../core/record/read-draft.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { ImportOutcome } from './book-import.js';
import type { SaveOutcome } from './record-book.js';
import { counted } from './status-view.js';

/** Where it is said: below the button that was pressed, for the head of a long book may be out of sight; else at its head. */
export type ToldAt = 'form' | 'swing' | 'transfer';

/** What was last done, in words, and whether it went wrong. */
export interface Told {
  readonly text: string;
  readonly wrong: boolean;
  readonly at?: ToldAt | undefined;
}

export function saveText(host: LubberElement, outcome: SaveOutcome, before: RecordEntry | null): Told {
  if (!outcome.saved) return { text: host.t(`record.unsaved.${outcome.reason}`, { number: outcome.number ?? '' }), wrong: true };
  const { number } = outcome.entry;
  if (outcome.keeps === 'memory') return { text: host.t('record.saved.memory', { number }), wrong: true };
  const earlier = entryMarks(outcome.entry, before).includes('earlier');
  return { text: host.t(earlier ? 'record.saved.earlier' : 'record.saved', { number }), wrong: earlier };
}

export function problemsText(host: LubberElement, problems: readonly DraftProblem[]): Told {
  const list = problems.map(({ field, problem }) => host.t(`problem.${problem}`, { field: fieldName(host, field) }));
  return { text: host.t('record.refused', { problems: list.join(host.t('list.semicolon')) }), wrong: true };
}

function fieldName(host: LubberElement, field: string): string {
  const name = host.t(`field.${field}`);
  return name === `field.${field}` ? field : name;
}

export function importText(host: LubberElement, outcome: ImportOutcome): Told {
  if (outcome.ok) return { text: counted(host, 'record.imported', outcome.added), wrong: false };
  const values = { number: outcome.number ?? '', book: 'book' in outcome ? outcome.book : '' };
  const why = host.t(`record.import.${outcome.reason}`, values);
  return { text: `${why} ${host.t('record.import.nothing-done')}`, wrong: true };
}
