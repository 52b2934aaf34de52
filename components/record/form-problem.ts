import type { EntryDraft } from '../../core/record/entry.js';
import { listText } from '../shared/list-text.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { Told } from './outcome-text.js';
import { fieldsFor } from './record-form.js';
import type { FormChoices, FormState } from './record-form.js';

/** Why the form cannot be entered as it stands, in words; null where it can. `struckBy` is the entry that has struck out the one to be corrected. */
export function formProblem(host: LubberElement, state: FormState, choices: FormChoices, draft: EntryDraft | null, struckBy: number | undefined): Told | null {
  const wrong = (key: string, values: Record<string, string | number>): Told => ({ text: host.t(key, values), wrong: true });
  const named = (names: readonly string[]): string => listText(host.t, names.map((name) => host.t(`field.${name}`)));
  if (host.unknownWords.length > 0) return wrong('answer.wrong', { fields: host.unknownWords.join(', ') });
  const refused = fieldsFor(choices).filter((name) => state[name].state === 'refused');
  if (refused.length > 0) return wrong('answer.wrong', { fields: named(refused) });
  // Only without a date or a time there is nothing to enter.
  if (!draft) return wrong('answer.missing', { fields: named((['date', 'time'] as const).filter((name) => state[name].state === 'empty')) });
  return struckBy === undefined ? null : wrong('record.unsaved.struck', { number: choices.corrects, by: struckBy });
}
