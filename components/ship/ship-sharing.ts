import { ContextProvider } from '@lit/context';
import { deviationByCard } from '../../core/deviation/deviation-by-card.js';
import { LubberRecordRequestEvent } from '../shared/events.js';
import type { RecordRequestDetail } from '../shared/events.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { shipContext } from '../shared/ship-context.js';
import type { Ship } from '../shared/ship-context.js';

/** What the ship shares as plain data. */
export type ShipData = Omit<Ship, 'deviationOn' | 'useCard' | 'onRecordRequest' | 'showBook'>;

/** Tells the widgets inside of the ship, and hands what they offer on to the books inside her. */
export class ShipSharing {
  /** What takes an entry, with the way to it. */
  readonly #books = new Map<(detail: RecordRequestDetail) => void, (() => void) | undefined>();
  readonly #useCard: Ship['useCard'];
  readonly #provider: ContextProvider<typeof shipContext>;
  /** What was last told, as text: widgets are told only when it changes. */
  #told = '';

  constructor(host: LubberElement, useCard: Ship['useCard']) {
    this.#useCard = useCard;
    this.#provider = new ContextProvider(host, { context: shipContext, initialValue: this.#ship({ name: '', compassName: '', values: {}, card: null }) });
    host.addEventListener(LubberRecordRequestEvent.type, (event) => {
      // A book inside takes it; without one the event goes on to whoever listens on the page.
      for (const take of this.#books.keys()) take((event as LubberRecordRequestEvent).detail);
    });
  }

  #ship(data: ShipData): Ship {
    const books = this.#books;
    return {
      ...data,
      deviationOn: (compassHeading) => data.card && deviationByCard(data.card, compassHeading),
      useCard: this.#useCard,
      onRecordRequest: (listener, show) => {
        books.set(listener, show);
        return () => books.delete(listener);
      },
      // Asked each time: a book may have come aboard or gone.
      get showBook() {
        return [...books.values()].find(Boolean);
      },
    };
  }

  /** Shares what has changed; whether anything has. */
  tell(data: ShipData): boolean {
    const told = JSON.stringify(data);
    if (told === this.#told) return false;
    this.#told = told;
    this.#provider.setValue(this.#ship(data));
    return true;
  }
}
