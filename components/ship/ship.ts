import { ContextProvider } from '@lit/context';
import { html } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { deviationByCard } from '../../core/deviation/deviation-by-card.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { variationSource } from '../../core/sight/variation-source.js';
import { deviationTableStyles } from '../shared/deviation-table-styles.js';
import { LubberRecordRequestEvent } from '../shared/events.js';
import type { RecordRequestDetail } from '../shared/events.js';
import { textOf, valueOf } from '../shared/field.js';
import type { FieldInput } from '../shared/field.js';
import { fileStyles } from '../shared/file-styles.js';
import { readGivenCard } from '../shared/given-card.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { combinedInstant, splitInstant } from '../shared/place-and-time.js';
import { shipContext } from '../shared/ship-context.js';
import type { CardOf, Ship, ShipValues } from '../shared/ship-context.js';
import { editView } from './edit-view.js';
import { cardForms, cardOf, cardView, coefficientNames } from './ship-card.js';
import type { CardForm, CardStates } from './ship-card.js';
import { readShipCorrectors } from './ship-correctors.js';
import type { ShipCorrectors } from './ship-correctors.js';
import { MOST_CHARACTERS, readShipFile, writeShipFile } from './ship-file.js';
import type { ShipFile } from './ship-file.js';
import { fileNameOf, shipFileView } from './ship-file-view.js';
import { sharedNames, shipFields as fields } from './ship-fields.js';
import { shipMessages } from './ship-messages.js';
import { recall, remember } from './ship-memory.js';
import { shipStyles } from './ship-styles.js';
import { shipSummary } from './ship-summary.js';

/**
 * Shares a ship's place, time, compass and deviation card with the widgets inside it, and
 * passes what they offer to the record book on to a book inside it. Nothing needs it.
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
 */
export class LubberShip extends LubberElement {
  static override styles: CSSResultGroup = [longTextStyles, fileStyles, sharedStyles, deviationTableStyles, shipStyles];

  /** It holds the widgets that answer a form; its `name` is the ship's. */
  static override readonly formAssociated: boolean = false;

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

  /** How the correctors stood, `standard` and `steering`; as attribute its JSON. */
  @property() correctors?: ShipCorrectors | string | null;

  /** The card as typed or pasted: heading and deviation on each line. */
  @property() table?: string;

  /** Which form of the card is shown for entry: `table` or `coefficients`. */
  @property({ attribute: 'card-form' }) cardForm?: string;

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

  /** Keeps the ship in this browser under the name given; without it nothing is kept. */
  @property() remember = '';

  @state() private fileText = '';
  @state() private fileProblem = '';

  protected readonly messages = shipMessages;
  protected readonly fields = fields;

  readonly #listeners = new Set<(detail: RecordRequestDetail) => void>();
  readonly #provider = new ContextProvider(this, { context: shipContext, initialValue: this.#shared() });
  /** The shared record as text: widgets are told only when it changes. */
  #told = '';

  constructor() {
    super();
    this.addEventListener(LubberRecordRequestEvent.type, (event) => {
      // A book inside takes it; without one the event goes on to whoever listens on the page.
      for (const listener of this.#listeners) listener((event as LubberRecordRequestEvent).detail);
    });
  }

  /** The card in use: as typed, or as given; null without one. */
  get cardInUse(): DeviationCard | null {
    return cardOf(this.#card);
  }

  get #cardForm(): CardForm {
    const asked = cardForms.find((form) => form === this.cardForm);
    return asked ?? (coefficientNames.some((name) => this.read(fields[name], name).state !== 'empty') ? 'coefficients' : 'table');
  }

  get #card(): CardStates {
    const coefficient = (name: (typeof coefficientNames)[number]) => this.read(fields[name], name);
    return {
      form: this.#cardForm,
      table: this.read(fields.table, 'table'),
      coefficients: {
        coefficientA: coefficient('coefficientA'),
        coefficientB: coefficient('coefficientB'),
        coefficientC: coefficient('coefficientC'),
        coefficientD: coefficient('coefficientD'),
        coefficientE: coefficient('coefficientE'),
      },
      given: readGivenCard(this.card),
    };
  }

  /** The ship as plain data, as it is written to a file. */
  get result(): ShipFile {
    const text = (name: 'latitude' | 'longitude' | 'heightOfEye' | 'variation' | 'heading'): string => textOf(fields[name], this.input(name));
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
      card: this.cardInUse,
      ...this.#beside,
    };
  }

  /** What is known of the steering compass and of the correctors, where anything is. */
  get #beside(): Pick<ShipFile, 'steeringCard' | 'correctors'> {
    const { card } = readGivenCard(this.steeringCard);
    const correctors = readShipCorrectors(this.correctors);
    return { ...(card ? { steeringCard: card } : {}), ...(Object.keys(correctors).length > 0 ? { correctors } : {}) };
  }

  #shared(): Ship {
    const values: Record<string, FieldInput> = {};
    for (const name of sharedNames) {
      // What is half typed or not understood here is nobody else's.
      const { state, text } = this.read<unknown>(fields[name], name);
      if (state === 'value') values[name] = text;
    }
    const card = this.cardInUse;
    return {
      name: this.name,
      compassName: this.compassName,
      modelVariation: this.#modelVariation(),
      values: values as ShipValues,
      card,
      ...this.#beside,
      deviationOn: (compassHeading) => card && deviationByCard(card, compassHeading),
      useCard: (card, of) => this.#useCard(card, of),
      onRecordRequest: (listener) => {
        this.#listeners.add(listener);
        return () => this.#listeners.delete(listener);
      },
    };
  }

  #modelVariation(): NonNullable<Ship['modelVariation']> | null {
    const latitude = valueOf(this.read(fields.latitude, 'latitude'));
    const longitude = valueOf(this.read(fields.longitude, 'longitude'));
    const instant = combinedInstant(this.read(fields.date, 'date'), this.read(fields.time, 'time'));
    if (latitude === undefined || longitude === undefined) return null;
    const variation = variationSource({ latitude, longitude }, instant);
    return variation.source === 'model' ? variation : null;
  }

  #useCard(card: DeviationCard, { compass, correctors }: CardOf = { compass: 'standard' }): void {
    if (compass === 'steering') this.steeringCard = card;
    else this.#takeCard(card);
    this.correctors = { ...readShipCorrectors(this.correctors), [compass]: correctors };
    this.say(this.t('ship.card.used'));
  }

  /** A card handed over takes the place of whatever was entered. */
  #takeCard(card: DeviationCard | null): void {
    this.card = card;
    for (const name of ['table', ...coefficientNames]) Object.assign(this, { [name]: undefined });
  }

  #removeCard(): void {
    // The value of a property that is no field.
    this.change('card', null);
    this.say(this.t('ship.card.removed'));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const kept = recall(this.remember);
    if (kept) this.#takeOver(kept, (name, text) => Object.assign(this, { [name]: text }));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    // An attribute taken away leaves null.
    for (const name of ['name', 'compassName', 'remember'] as const) this[name] ??= '';
    splitInstant(this, changed);
    const ship = this.#shared();
    const told = JSON.stringify([ship.name, ship.compassName, ship.values, ship.card, ship.steeringCard, ship.correctors]);
    if (told === this.#told) return;
    this.#told = told;
    this.#provider.setValue(ship);
    if (this.hasUpdated) remember(this.remember, this.result);
  }

  protected override resultDetail() {
    return { inputs: {}, result: this.result };
  }

  #takeOver(file: ShipFile, set: (name: 'latitude' | 'longitude' | 'heightOfEye' | 'variation' | 'heading', text: string | undefined) => void): void {
    this.name = file.name;
    this.compassName = file.compassName;
    for (const name of ['latitude', 'longitude', 'heightOfEye', 'variation', 'heading'] as const) set(name, file[name] || undefined);
    this.#takeCard(file.card);
    this.steeringCard = file.steeringCard ?? null;
    this.correctors = file.correctors ?? null;
  }

  #readFile(): void {
    const reading = readShipFile(this.fileText);
    this.fileProblem = reading.ok ? '' : this.t(`ship.file.${reading.reason}`, { where: reading.where });
    if (!reading.ok) return;
    this.#takeOver(reading.file, (name, text) => {
      this.change(name, text);
      // What a file brings is no half-typed text.
      this.settle(name);
    });
    this.say(this.t('ship.file.taken'));
  }

  async #openFile(file: File): Promise<void> {
    this.fileProblem = file.size > MOST_CHARACTERS ? this.t('ship.file.too-long') : '';
    if (this.fileProblem) return;
    try {
      this.fileText = await file.text();
    } catch {
      // A file may be gone by the time it is read.
      this.fileProblem = this.t('ship.file.unreadable');
      return;
    }
    this.#readFile();
  }

  #fileView(): TemplateResult {
    return shipFileView(this, {
      text: this.fileText,
      problem: this.fileProblem,
      fileName: fileNameOf(this.name),
      onText: (text) => (this.fileText = text),
      onWrite: () => {
        this.fileText = writeShipFile(this.result);
        this.fileProblem = '';
        this.say(this.t('ship.file.written'));
      },
      onRead: () => this.#readFile(),
      onFile: (file) => void this.#openFile(file),
      written: () => writeShipFile(this.result),
    });
  }

  protected override render(): TemplateResult {
    const states = this.readAll(fields);
    return html`${this.frame(html`
        <div class="bar">
          <h2 part="title">${this.name || this.t('ship.unnamed')}</h2>
          <span class="soft small">${shipSummary(this, states, this.cardInUse)}</span>
        </div>
        ${editView(this, { states, names: this, card: cardView(this, this.#card, () => this.#removeCard()), file: this.#fileView() })}
      `)}
      <slot></slot>`;
  }
}
