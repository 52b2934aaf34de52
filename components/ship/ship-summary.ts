import { html } from 'lit';
import type { TemplateResult } from 'lit';
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

/** Place, time and cards for the bar above the widgets: a line may break between them, and within one only where it has no room. */
export function shipSummary(host: LubberElement, { latitude, longitude, date, time }: ShipStates, { card, steeringCard }: Cards): TemplateResult[] {
  const instant = combinedInstant(date, time);
  const parts = [
    latitude.state === 'value' && longitude.state === 'value'
      ? `${shipFields.latitude.show(latitude.value)} ${shipFields.longitude.show(longitude.value)}`
      : host.t('ship.place.none'),
    instant ? formatInstant(instant).replace('T', ' ').replace('Z', ' UTC') : host.t('ship.time.none'),
    cardText(host, card),
    ...(steeringCard ? [ofCompass(host, 'steering', cardText(host, steeringCard))] : []),
  ];
  return parts.map((part, place) => html`${place ? ' · ' : ''}<bdi>${part}</bdi>`);
}
