import { readGivenCard } from '../shared/given-card.js';
import type { GivenCard } from '../shared/given-card.js';

/** Reads a card once: from the same text comes the same object, and what was worked out with it still holds. */
export class CardReader {
  #given: unknown;
  #card: GivenCard = { card: null, problem: null };

  read(given: unknown): GivenCard {
    if (given !== this.#given) {
      this.#given = given;
      this.#card = readGivenCard(given);
    }
    return this.#card;
  }
}
