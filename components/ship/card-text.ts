import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** What kind of card is in use, in few words. */
export function cardText(host: LubberElement, card: DeviationCard | null): string {
  if (!card) return host.t('ship.card.none');
  return card.kind === 'table' ? host.t('ship.card.table', { count: card.rows.length }) : host.t('ship.card.coefficients');
}
