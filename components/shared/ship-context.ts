import { createContext } from '@lit/context';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { VariationSource } from '../../core/sight/variation-source.js';
import type { RecordRequestDetail } from './events.js';

/** Fields that widgets inside a ship share, as text or value, by the property of a widget. */
export type ShipValues = Readonly<
  Partial<Record<'latitude' | 'longitude' | 'date' | 'time' | 'heightOfEye' | 'variation' | 'heading', string | number>>
>;

/** What `<lubber-ship>` shares with the widgets inside it. Nothing needs one. */
export interface Ship {
  readonly name: string;
  readonly compassName: string;
  readonly values: ShipValues;
  readonly card: DeviationCard | null;
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
  /** Takes a card, such as the one a swing has made, into use. */
  useCard(card: DeviationCard): void;
  /** The record book inside the ship listens here; returns how to stop listening. */
  onRecordRequest(listener: (detail: RecordRequestDetail) => void): () => void;
}

/** Found by the community protocol's `context-request` event, so a foreign provider works too. */
export const shipContext = createContext<Ship>('lubber-ship');
