import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { formatInstant } from '../../core/time/instant.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { combinedInstant } from '../shared/place-and-time.js';
import { shipFields } from './ship-fields.js';
import type { ShipStates } from './ship-fields.js';

function cardText(host: LubberElement, card: DeviationCard | null): string {
  if (!card) return host.t('ship.card.none');
  return card.kind === 'table' ? host.t('ship.card.table', { count: card.rows.length }) : host.t('ship.card.coefficients');
}

/** Place, time and card in one line, for the bar above the widgets. */
export function shipSummary(host: LubberElement, { latitude, longitude, date, time }: ShipStates, card: DeviationCard | null): string {
  const instant = combinedInstant(date, time);
  return host.t('ship.summary', {
    place:
      latitude.state === 'value' && longitude.state === 'value'
        ? `${shipFields.latitude.show(latitude.value)} ${shipFields.longitude.show(longitude.value)}`
        : host.t('ship.place.none'),
    time: instant ? formatInstant(instant).replace('T', ' ').replace('Z', ' UTC') : host.t('ship.time.none'),
    card: cardText(host, card),
  });
}
