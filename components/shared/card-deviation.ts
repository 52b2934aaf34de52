import { deviationByCard } from '../../core/deviation/deviation-by-card.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';

/** What a card says for a heading by compass, degrees, east positive; undefined where there is no card, no heading or no single answer. */
export function cardDeviationOn(card: DeviationCard | null | undefined, heading: number | undefined): number | undefined {
  if (!card || heading === undefined) return undefined;
  return deviationByCard(card, heading) ?? undefined;
}
