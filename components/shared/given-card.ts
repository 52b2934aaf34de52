import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { readDeviationCard } from '../../core/deviation/read-deviation-card.js';
import { isUnset } from './field.js';

/** A card handed over by the host, by the ship, or none; or why what was handed over is no card. */
export type GivenCard =
  | { readonly card: DeviationCard | null; readonly problem: null }
  | { readonly card: null; readonly problem: { readonly reason: string; readonly where: string } };

/** Reads a card from a property or, as JSON, from an attribute. */
export function readGivenCard(given: unknown): GivenCard {
  if (isUnset(given) || given === '') return { card: null, problem: null };
  let value: unknown = given;
  if (typeof given === 'string') {
    try {
      value = JSON.parse(given) as unknown;
    } catch {
      return { card: null, problem: { reason: 'not-json', where: 'card' } };
    }
  }
  const reading = readDeviationCard(value);
  return reading.ok ? { card: reading.card, problem: null } : { card: null, problem: { reason: reading.reason, where: reading.where || 'card' } };
}
