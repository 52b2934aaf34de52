import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { formatInstant } from '../../core/time/instant.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { combinedInstant } from '../shared/place-and-time.js';
import { cardText } from './card-text.js';
import { ofCompass } from './of-compass.js';
import { shipFields } from './ship-fields.js';
import type { ShipStates } from './ship-fields.js';

/** The cards in use. */
interface Cards {
  readonly card: DeviationCard | null;
  readonly steeringCard?: DeviationCard;
}

/** Place, time and cards in one line, for the bar above the widgets. */
export function shipSummary(host: LubberElement, { latitude, longitude, date, time }: ShipStates, { card, steeringCard }: Cards): string {
  const instant = combinedInstant(date, time);
  const summary = host.t('ship.summary', {
    place:
      latitude.state === 'value' && longitude.state === 'value'
        ? `${shipFields.latitude.show(latitude.value)} ${shipFields.longitude.show(longitude.value)}`
        : host.t('ship.place.none'),
    time: instant ? formatInstant(instant).replace('T', ' ').replace('Z', ' UTC') : host.t('ship.time.none'),
    card: cardText(host, card),
  });
  return steeringCard ? `${summary} · ${ofCompass(host, 'steering', cardText(host, steeringCard))}` : summary;
}
