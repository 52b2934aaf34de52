import type { EntryFields } from './entry.js';
import { entryFields } from './entry-fields.js';
import type { FieldProblem, FieldValue } from './field-text.js';
import { takeValue } from './field-text.js';

export interface DraftProblem {
  readonly field: string;
  readonly problem: FieldProblem | 'unknown-field' | 'nothing-observed' | 'does-not-belong';
}

export type DraftReading =
  | { readonly ok: true; readonly fields: EntryFields }
  | { readonly ok: false; readonly problems: readonly DraftProblem[] };

/** What an observation must have one of: without any there is nothing to write down. */
const observed: readonly (keyof EntryFields)[] = [
  'bearing', 'headingGyro', 'headingStandard', 'headingSteering', 'errorGyro', 'errorStandard', 'errorSteering', 'deviation',
];

/** Whether the fields of a kind go together. */
function kindProblems(fields: EntryFields): DraftProblem[] {
  const problems: DraftProblem[] = [];
  const kind = fields.kind === 'correction' ? fields.replacement : fields.kind;
  if (kind === 'observation' && observed.every((name) => fields[name] === null)) {
    problems.push({ field: 'bearing', problem: 'nothing-observed' });
  }
  if (kind === 'event' && fields.event === null) problems.push({ field: 'event', problem: 'missing' });
  if (kind !== 'event' && fields.event !== null) problems.push({ field: 'event', problem: 'does-not-belong' });
  if (fields.kind === 'correction') {
    if (fields.corrects === null) problems.push({ field: 'corrects', problem: 'missing' });
    // A book that strikes out must say why.
    if (fields.remarks === '') problems.push({ field: 'remarks', problem: 'missing' });
  } else {
    for (const field of ['corrects', 'replacement'] as const) {
      if (fields[field] !== null) problems.push({ field, problem: 'does-not-belong' });
    }
  }
  return problems;
}

/**
 * Reads a draft of unknown origin into the fields of an entry, every one present and in its
 * form, or says of every bad field what is wrong. Never throws.
 */
export function readDraft(draft: unknown): DraftReading {
  if (typeof draft !== 'object' || draft === null || Array.isArray(draft)) {
    return { ok: false, problems: [{ field: 'kind', problem: 'missing' }] };
  }
  const bag = draft as Readonly<Record<string, unknown>>;
  const problems: DraftProblem[] = [];
  const fields: Record<string, FieldValue> = {};
  for (const [name, form] of entryFields) {
    const outcome = takeValue(form, Object.hasOwn(bag, name) ? bag[name] : undefined);
    if (outcome.ok) fields[name] = outcome.value;
    else problems.push({ field: name, problem: outcome.problem });
  }
  const known = new Set<string>(entryFields.map(([name]) => name));
  for (const name of Object.keys(bag)) if (!known.has(name)) problems.push({ field: name, problem: 'unknown-field' });
  if (problems.length > 0) return { ok: false, problems };
  const read = fields as unknown as EntryFields;
  const apart = kindProblems(read);
  return apart.length > 0 ? { ok: false, problems: apart } : { ok: true, fields: read };
}
