import { property } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { LubberElement } from '../shared/lubber-element.js';
import type { CardForm } from './ship-card.js';
import type { ShipCorrectors } from './ship-correctors.js';
import { shipFields } from './ship-fields.js';
import { shipMessages } from './ship-messages.js';

/** What a page can set of a ship. */
export abstract class ShipProperties extends LubberElement {
  /** Name of the ship. */
  @property() override name = '';

  /** Name of the compass the card is of, such as `standard`. */
  @property({ attribute: 'compass-name' }) compassName = '';

  /** Degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** The whole instant, ISO 8601 UTC; fills date and time. */
  @property() instant?: string | Date;

  /** Day, UTC. */
  @property() date?: string;

  /** Time of day, UTC. */
  @property() time?: string;

  /** Metres. */
  @property({ attribute: 'height-of-eye' }) heightOfEye?: string | number;

  /** Ship's head by compass, degrees. */
  @property() heading?: string | number;

  /** Degrees, east positive; left empty, each widget asks the magnetic model. */
  @property() variation?: string | number;

  /** The deviation card: plain data, or JSON in the attribute. */
  @property() card?: DeviationCard | string | null;

  /** The card of the steering compass: plain data, or JSON in the attribute. */
  @property({ attribute: 'steering-card' }) steeringCard?: DeviationCard | string | null;

  /** How the correctors stood, `standard` and `steering`, when the cards in use were made; as attribute its JSON. */
  @property() correctors?: ShipCorrectors | string | null;

  /** The card as typed or pasted: heading and deviation on each line. */
  @property() table?: string;

  /** The card of the steering compass, as typed or pasted. */
  @property({ attribute: 'steering-table' }) steeringTable?: string;

  /** Which form of the card is shown for entry: `table` or `coefficients`. */
  @property({ attribute: 'card-form' }) cardForm?: CardForm;

  /** Approximate coefficient A, degrees, east positive, or text such as `2.5W`. */
  @property({ attribute: 'coefficient-a' }) coefficientA?: string | number;

  /** Approximate coefficient B, degrees, east positive, or text such as `2.5W`. */
  @property({ attribute: 'coefficient-b' }) coefficientB?: string | number;

  /** Approximate coefficient C, degrees, east positive, or text such as `2.5W`. */
  @property({ attribute: 'coefficient-c' }) coefficientC?: string | number;

  /** Approximate coefficient D, degrees, east positive, or text such as `2.5W`. */
  @property({ attribute: 'coefficient-d' }) coefficientD?: string | number;

  /** Approximate coefficient E, degrees, east positive, or text such as `2.5W`. */
  @property({ attribute: 'coefficient-e' }) coefficientE?: string | number;

  /** Keeps the ship in this browser under the name given, one ship of a name a page; other pages open at her follow. Without it nothing is kept. */
  @property() remember = '';

  protected readonly messages = shipMessages;
  protected readonly fields = shipFields;
}
