import type { Correctors } from '../../core/deviation/corrector-states.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';

/** A card in use, and whether the user has typed it. */
interface CardInUse {
  readonly card: DeviationCard | null;
  readonly typed: boolean;
}

/** Whether a typed card may be another one under the same hand: a line mended, one more added. */
function isAlike(before: DeviationCard | null, now: DeviationCard | null): boolean {
  if (before?.kind !== 'table' || now?.kind !== 'table') return before?.kind === now?.kind;
  // Of a single line, every figure typed makes another.
  return before.rows.length < 2 || before.rows.some((row) => now.rows.some((other) => row.heading === other.heading && row.deviation === other.deviation));
}

/**
 * The correctors of one compass go with the card they were noted for: where another card takes
 * its place they are put aside, and come back with it.
 */
export class CorrectorsOfCards {
  readonly #aside = new Map<string, Correctors | undefined>();
  #before: CardInUse = { card: null, typed: false };

  /** What is known of the correctors while a card is in use, `noted` until then; `said` with the card itself, they are its own. */
  follow(now: CardInUse, noted: Correctors | undefined, said: boolean): Correctors | undefined {
    const before = this.#before;
    const [old, key] = [JSON.stringify(before.card), JSON.stringify(now.card)];
    this.#before = now;
    // They may be noted first, and the card be entered then.
    const isFirst = before.card === null && !this.#aside.has(key);
    if (said || old === key || isFirst || (before.typed && now.typed && isAlike(before.card, now.card))) return noted;
    this.#aside.set(old, noted);
    return this.#aside.get(key);
  }
}
