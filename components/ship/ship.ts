import { html } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { correctorsStyles } from '../shared/correctors-styles.js';
import { deviationTableStyles } from '../shared/deviation-table-styles.js';
import { textOf } from '../shared/field.js';
import { fileStyles } from '../shared/file-styles.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { splitInstant } from '../shared/place-and-time.js';
import type { CardOf } from '../shared/ship-context.js';
import { compassView } from './compass-view.js';
import { CorrectorsOfCards } from './correctors-of-cards.js';
import { editView } from './edit-view.js';
import { ofCompass } from './of-compass.js';
import { cardOf, coefficientNames, enteredCard, isHalfTyped, shipCards } from './ship-card.js';
import type { CardStates } from './ship-card.js';
import { compassNames, readShipCorrectors } from './ship-correctors.js';
import { filedFields } from './ship-file.js';
import type { ShipFile } from './ship-file.js';
import { ShipFileDesk } from './ship-file-desk.js';
import { shipFileView } from './ship-file-view.js';
import { sharedValues, shipFields as fields } from './ship-fields.js';
import { recall, remember, shipKey } from './ship-memory.js';
import { modelVariation } from './ship-model-variation.js';
import { ShipProperties } from './ship-properties.js';
import { ShipSharing } from './ship-sharing.js';
import { shipStyles } from './ship-styles.js';
import { shipSummary } from './ship-summary.js';

/**
 * Shares a ship's place, time, compasses and deviation cards with the widgets inside it, and
 * passes what they offer to the record book on to the book inside it. Nothing needs it. Of several
 * books inside, each takes every sight, as one of the compass it watches: the book of a second
 * compass stands outside, where the page hands it what is its own by `appendRequest`.
 *
 * @element lubber-ship
 * @fires lubber-result - when the user changed something of the ship: `result` is the ship as plain data
 * @slot - the widgets that share the ship
 * @csspart frame - the bar above the widgets
 * @csspart title - the heading
 * @csspart field - one field with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - the entry of one corrector
 */
export class LubberShip extends ShipProperties {
  static override styles: CSSResultGroup = [longTextStyles, fileStyles, sharedStyles, deviationTableStyles, correctorsStyles, shipStyles];

  /** It holds the widgets that answer a form; its `name` is the ship's. */
  static override readonly formAssociated: boolean = false;

  readonly #sharing = new ShipSharing(this, (card, of) => this.#useCard(card, of));
  readonly #file = new ShipFileDesk(this, (file) => this.#takeByHand(file));
  readonly #correctors = { standard: new CorrectorsOfCards(), steering: new CorrectorsOfCards() };

  /** Changed on another page, she is changed here too: two that differ would each write over what the other has come to, cards and all. */
  readonly #hear = ({ key }: StorageEvent): void => {
    if (key === shipKey(this.remember)) this.#recall(true);
  };

  get #cards(): ReturnType<typeof shipCards> {
    return shipCards(this.readAll(fields), this);
  }

  /** The card in use: as typed, or as given; null without one. */
  get cardInUse(): DeviationCard | null {
    return cardOf(this.#cards.standard);
  }

  /** The cards in use and how the correctors stood; of the steering compass and of correctors only where anything is known. */
  get #compasses(): Pick<ShipFile, 'card' | 'steeringCard' | 'correctors'> {
    const steeringCard = cardOf(this.#cards.steering);
    const correctors = readShipCorrectors(this.correctors);
    return { card: this.cardInUse, ...(steeringCard ? { steeringCard } : {}), ...(Object.keys(correctors).length > 0 ? { correctors } : {}) };
  }

  /** The ship as plain data, as it is written to a file. */
  get result(): ShipFile {
    const text = (name: (typeof filedFields)[number]): string => textOf(fields[name], this.input(name));
    return {
      schema: 'lubberline-ship',
      version: 1,
      name: this.name,
      compassName: this.compassName,
      latitude: text('latitude'),
      longitude: text('longitude'),
      heightOfEye: text('heightOfEye'),
      variation: text('variation'),
      heading: text('heading'),
      ...this.#compasses,
    };
  }

  /** The ship kept under a name comes before whatever stands here, also where a page gives the name late. */
  #recall(elsewhere = false): void {
    const kept = recall(this.remember);
    if (kept) this.#take(kept, (name, text) => Object.assign(this, { [name]: text }), elsewhere);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const named = changed.has('remember');
    if (named) this.#recall();
    super.willUpdate(changed);
    // An attribute taken away leaves null.
    for (const name of ['name', 'compassName', 'remember'] as const) this[name] ??= '';
    splitInstant(this, changed);
    this.#followCards(changed);
    const states = this.readAll(fields);
    const { name, compassName } = this;
    const isNew = this.#sharing.tell({ name, compassName, modelVariation: modelVariation(states), values: sharedValues(states), ...this.#compasses });
    if ((isNew || named) && this.hasUpdated) remember(this.remember, this.result);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('storage', this.#hear);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('storage', this.#hear);
  }

  /** Puts correctors aside whose card is no longer in use; set with the cards, they are theirs. */
  #followCards(changed: ReadonlyMap<PropertyKey, unknown>): void {
    const given = changed.has('correctors');
    // Behind what was just said of the card itself.
    const said = changed.has('announcement') ? [this.announcement] : [];
    const noted = readShipCorrectors(this.correctors);
    for (const compass of compassNames) {
      const states = this.#cards[compass];
      // Between two figures there is no card.
      if (isHalfTyped(states)) continue;
      const now = { card: cardOf(states), typed: enteredCard(states) !== null };
      const correctors = this.#correctors[compass].follow(now, noted[compass], given);
      if (correctors === noted[compass]) continue;
      this.correctors = { ...readShipCorrectors(this.correctors), [compass]: correctors };
      said.push(ofCompass(this, compass, this.t(correctors ? 'ship.correctors.back' : 'ship.correctors.aside')));
      this.say(said.join(' '));
    }
  }

  protected override resultDetail() {
    return { inputs: {}, result: this.result };
  }

  /** A card handed over, such as one a swing has made, takes the place of whatever was entered. */
  #useCard(card: DeviationCard, { compass, correctors }: CardOf = { compass: 'standard' }): void {
    if (compass === 'steering') Object.assign(this, { steeringCard: card, steeringTable: undefined });
    else this.#takeCard(card);
    this.correctors = { ...readShipCorrectors(this.correctors), [compass]: correctors };
    this.say(ofCompass(this, compass, this.t('ship.card.used')));
  }

  #takeCard(card: DeviationCard | null): void {
    this.card = card;
    for (const name of ['table', ...coefficientNames]) Object.assign(this, { [name]: undefined });
  }

  /** Changed `elsewhere`, on another page, while something is typed here: what is half typed stays, and a card that is the same stays as it was entered. */
  #take(file: ShipFile, set: (name: (typeof filedFields)[number], text: string | undefined) => void, elsewhere = false): void {
    const { name, compassName, card, steeringCard = null, correctors = null } = file;
    const { standard, steering } = this.#cards;
    const states = this.readAll(fields);
    const isSame = (entered: CardStates, other: DeviationCard | null): boolean => elsewhere && JSON.stringify(cardOf(entered)) === JSON.stringify(other);
    for (const field of filedFields) if (!elsewhere || states[field].state !== 'refused') set(field, file[field] || undefined);
    if (elsewhere && isHalfTyped(standard)) this.card = card;
    else if (!isSame(standard, card)) this.#takeCard(card);
    if (elsewhere && isHalfTyped(steering)) this.steeringCard = steeringCard;
    else if (!isSame(steering, steeringCard)) Object.assign(this, { steeringCard, steeringTable: undefined });
    Object.assign(this, { name, compassName, correctors });
  }

  #takeByHand(file: ShipFile): void {
    this.#take(file, (name, text) => {
      this.change(name, text);
      // What a file brings is no half-typed text.
      this.settle(name);
    });
  }

  protected override render(): TemplateResult {
    const states = this.readAll(fields);
    const cards = this.#cards;
    const known = readShipCorrectors(this.correctors);
    return html`${this.frame(html`
        <div class="bar">
          <h2 part="title">${this.name || this.t('ship.unnamed')}</h2>
          <span class="soft small">${shipSummary(this, states, this.#compasses)}</span>
        </div>
        ${editView(this, {
          states,
          names: this,
          cards: compassNames.map((compass) => compassView(this, compass, cards[compass], known)),
          file: shipFileView(this, this.#file, () => this.result),
        })}
      `)}
      <slot></slot>`;
  }
}
