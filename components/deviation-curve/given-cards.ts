import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { readDeviationCard } from '../../core/deviation/read-deviation-card.js';
import { isBag } from './plain-data.js';

/** A card with the name it goes by, such as `as found` or `as left`. */
export interface NamedCard {
  readonly name: string;
  readonly card: DeviationCard;
}

export interface CardsReading {
  readonly cards: readonly NamedCard[];
  /** Where the first card that is none stands, and why. */
  readonly problem: { readonly where: string; readonly reason: string } | null;
}

/** Reads named cards from a property or, as JSON, from an attribute: the first is the one in use. */
export function readCards(given: unknown): CardsReading {
  if (given === undefined || given === null || given === '' || given === 'undefined' || given === 'null') return { cards: [], problem: null };
  let value: unknown = given;
  if (typeof given === 'string') {
    try {
      value = JSON.parse(given) as unknown;
    } catch {
      return { cards: [], problem: { where: 'cards', reason: 'not-json' } };
    }
  }
  if (!Array.isArray(value)) return { cards: [], problem: { where: 'cards', reason: 'not-an-object' } };
  const cards: NamedCard[] = [];
  for (const [index, item] of (value as readonly unknown[]).entries()) {
    const reading = readDeviationCard(isBag(item) ? item['card'] : undefined);
    if (!reading.ok) return { cards, problem: { where: `cards[${index}].card${reading.where ? `.${reading.where}` : ''}`, reason: reading.reason } };
    const name = isBag(item) && typeof item['name'] === 'string' ? item['name'] : String(index + 1);
    cards.push({ name, card: reading.card });
  }
  return { cards, problem: null };
}
