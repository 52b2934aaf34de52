/** Why an entry was not saved, by code. */
export type SaveProblem = 'duplicate' | 'full' | 'closed' | 'not-there' | 'failed';

/** Thrown inside a transaction where the same content stands last in the book already. */
export class DuplicateEntry extends Error {
  readonly number: number;

  constructor(number: number) {
    super(`duplicate of entry ${number}`);
    this.number = number;
  }
}

/** The names are those of the Indexed Database standard's exceptions. */
export function saveProblemOf(error: unknown): SaveProblem {
  if (error instanceof DuplicateEntry) return 'duplicate';
  if (error instanceof RangeError) return 'not-there';
  const name = error instanceof Error ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return name === 'InvalidStateError' ? 'closed' : 'failed';
}
