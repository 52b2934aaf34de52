import { createContext } from '@lit/context';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { VariationSource } from '../../core/sight/variation-source.js';
import type { RecordRequestDetail } from './events.js';

/** Fields that widgets inside a ship share, as text or value, by the property of a widget. */
export type ShipValues = Readonly<
  Partial<Record<'latitude' | 'longitude' | 'date' | 'time' | 'heightOfEye' | 'variation' | 'heading', string | number>>
>;

/** Of which compass a card is, and how that compass's correctors stood; the standard compass where nothing is said. */
export interface CardOf {
  readonly compass: 'standard' | 'steering';
  readonly correctors?: Correctors;
}

/**
 * What `<lubber-ship>` shares with the widgets inside it. Nothing needs one; a provider of
 * another hand must offer every member without a question mark, `deviationOn` among them: it
 * alone tells the sights what the card says. Without it they work as where there is no card.
 */
export interface Ship {
  readonly name: string;
  readonly compassName: string;
  readonly values: ShipValues;
  readonly card: DeviationCard | null;
  /** The card of the steering compass, where one has been made. */
  readonly steeringCard?: DeviationCard | null;
  /** How the correctors of each compass stood when its card was made, where that is known. */
  readonly correctors?: Readonly<Partial<Record<'standard' | 'steering', Correctors>>>;
  /**
   * The variation where the ship is, of the magnetic model, for widgets that carry no model of their
   * own; null where place or time is not known or no model reaches. A provider may do without.
   */
  readonly modelVariation?: Extract<VariationSource, { source: 'model' }> | null;
  /**
   * What the card says on a heading by compass, degrees, east positive; null without a card or where
   * it has no single answer. The ship works it out, so that a widget alone on a page carries no cards.
   */
  deviationOn(compassHeading: number): number | null;
  /** Takes a card, such as the one a swing has made, into use: of the standard compass unless said otherwise. */
  useCard(card: DeviationCard, of?: CardOf): void;
  /**
   * The record book inside the ship listens here, and says how to lead a user to it; returns how to
   * stop listening.
   */
  onRecordRequest(listener: (detail: RecordRequestDetail) => void, show?: () => void): () => void;
  /** Leads the user to the record book inside the ship, where there is one. */
  readonly showBook?: (() => void) | undefined;
}

/** Found by the community protocol's `context-request` event, so a foreign provider works too. */
export const shipContext = createContext<Ship>('lubber-ship');
