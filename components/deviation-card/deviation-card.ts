import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { formatDate, instantOf } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { correctorsStyles } from '../shared/correctors-styles.js';
import { deviationChartStyles } from '../shared/deviation-chart-styles.js';
import { deviationTableStyles } from '../shared/deviation-table-styles.js';
import { isUnset, valueOf } from '../shared/field.js';
import type { FieldInput } from '../shared/field.js';
import { readGivenCard } from '../shared/given-card.js';
import type { GivenCard } from '../shared/given-card.js';
import { cardProblemView } from '../shared/given-card-view.js';
import { limitCodes, limitNamed } from '../shared/limit-view.js';
import type { LimitCode } from '../shared/limit-view.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { mainButtonStyles } from '../shared/main-button-styles.js';
import { missingView } from '../shared/missing-view.js';
import { printAlone } from '../shared/print-alone.js';
import { inReadingOrder } from '../shared/reading-order.js';
import { signatureStyles } from '../shared/signature-styles.js';
import { cardContent } from './card-content.js';
import type { CardContent, CardResult, Particulars } from './card-content.js';
import { cardEntry } from './card-entry.js';
import { cardFields as fields } from './card-fields.js';
import { cardMessages } from './card-messages.js';
import { cardPaper } from './card-paper.js';
import { cardStyles } from './card-styles.js';
import { readCorrectors } from '../../core/deviation/corrector-states.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';

/**
 * The card of residual deviations as it hangs in the wheelhouse, on A4 or as a pocket card:
 * figures, particulars, correctors, limits, age, remarks and lines to sign on.
 *
 * @element lubber-deviation-card
 * @fires lubber-result - when what the user did led to a card: `inputs`, `result`
 * @csspart frame - the whole widget
 * @csspart title - the heading
 * @csspart field - one field with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - a table
 * @csspart picture - a drawing, to scale
 * @csspart paper - the card as it is printed
 * @csspart cautions - what is odd about the card
 * @csspart caution - one of the cautions
 */
export class LubberDeviationCard extends LubberElement {
  static override styles: CSSResultGroup = [longTextStyles, sharedStyles, mainButtonStyles, answerStyles, deviationTableStyles, deviationChartStyles, correctorsStyles, signatureStyles, cardStyles];

  /** A deviation card as plain data; as attribute its JSON. */
  @property() card?: DeviationCard | string;

  /** Whose card of the ship around it: `standard` or `steering`. */
  @property({ attribute: 'ship-card' }) shipCard: 'standard' | 'steering' = 'standard';

  /** Deviations as text, a heading and a deviation a line; comes before `card`. */
  @property() table?: string;

  /** `a4` or `pocket`. */
  @property() format: 'a4' | 'pocket' = 'a4';

  /** Step of the headings, degrees: `10` or `15`. */
  @property() every: 10 | 15 | '10' | '15' = 10;

  /** Code of the limit: `flag-five`, `after-adjustment`, `in-service` or `panama-canal`. */
  @property() limit: LimitCode = 'flag-five';

  /** Name of the ship. */
  @property() vessel?: string;

  /** Which compass: standard, steering, its maker's type. */
  @property({ attribute: 'compass-name' }) compassName?: string;

  /** Serial number of the compass. */
  @property() serial?: string;

  /** Where she was swung. */
  @property() place?: string;

  /** Day of the swing. */
  @property() date?: string;

  /** Horizontal force at the place of the swing, microtesla. */
  @property() horizontal?: string | number;

  /** Vertical force there, microtesla, downward positive. */
  @property() vertical?: string | number;

  /** The state of the correctors; as attribute its JSON. */
  @property() correctors?: Partial<Correctors> | string;

  /** Remarks printed on the card. */
  @property() remarks?: string;

  /** The day the age is reckoned to; today where it is left out. */
  @property() today?: string | Date;

  protected readonly messages = cardMessages;
  protected readonly fields = fields;
  protected override readonly words = { format: ['a4', 'pocket'], every: ['10', '15'], limit: limitCodes, shipCard: ['standard', 'steering'] };

  #content: CardContent | null = null;

  /** The last card as plain data; null where there is none. */
  get result(): CardResult | null {
    this.#compute();
    return this.#content?.result ?? null;
  }

  protected override input(name: string): FieldInput {
    // The position and time of the ship are not those of the swing.
    if (name === 'date') return isUnset(this.date) ? undefined : this.date;
    const own = super.input(name);
    if (name === 'vessel') return own ?? this.ship?.name;
    return name === 'compassName' ? (own ?? (this.ship && this.#steering ? this.t('card.steering') : this.ship?.compassName)) : own;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#compute();
  }

  get #given(): GivenCard {
    const typed = valueOf(this.read<DeviationCard>(fields.table, 'table'));
    if (typed) return { card: typed, problem: null };
    const own = readGivenCard(this.card);
    return own.card || own.problem ? own : { card: (this.#steering ? this.ship?.steeringCard : this.ship?.card) ?? null, problem: null };
  }

  get #limit(): DeviationLimit {
    return limitNamed(this.limit);
  }

  get #every(): 10 | 15 {
    return Number(this.every) === 15 ? 15 : 10;
  }

  get #format(): 'a4' | 'pocket' {
    return this.format === 'pocket' ? 'pocket' : 'a4';
  }

  get #particulars(): Particulars {
    const words = (name: 'vessel' | 'compassName' | 'serial' | 'place' | 'remarks'): string => valueOf(this.read(fields[name], name)) ?? '';
    const number = (name: 'horizontal' | 'vertical'): number | null => valueOf(this.read(fields[name], name)) ?? null;
    const date = valueOf(this.read(fields.date, 'date'));
    return {
      vessel: words('vessel'),
      compassName: words('compassName'),
      serial: words('serial'),
      place: words('place'),
      date: date ? formatDate(instantOf(date, 0)) : '',
      horizontal: number('horizontal'),
      vertical: number('vertical'),
      remarks: words('remarks'),
      correctors: this.#correctors,
    };
  }

  get #steering(): boolean {
    return this.shipCard === 'steering';
  }

  /** As entered, else as they stood when the ship's card was made. */
  get #correctors(): Correctors {
    return readCorrectors(this.correctors ?? this.ship?.correctors?.[this.#steering ? 'steering' : 'standard']);
  }

  get #today(): Date {
    const day = this.today === undefined ? new Date() : new Date(this.today);
    return Number.isNaN(day.getTime()) ? new Date() : day;
  }

  #compute(): void {
    const { card } = this.#given;
    this.#content = card && !this.hasUnknownWord
      ? cardContent({
          card,
          particulars: this.#particulars,
          date: valueOf(this.read(fields.date, 'date')),
          every: this.#every,
          limit: this.#limit,
          today: this.#today,
        })
      : null;
  }

  protected override resultDetail() {
    if (!this.#content) return null;
    return { inputs: { every: this.#every, format: this.#format, limit: this.#limit.code }, result: this.#content.result };
  }

  get #names() {
    const name = (field: 'date' | 'horizontal' | 'vertical') => ({ state: this.read<unknown>(fields[field], field), label: this.t(`card.${field}`), needed: false });
    return [{ state: this.read<unknown>(fields.table, 'table'), label: this.t('card.entry'), needed: false }, name('date'), name('horizontal'), name('vertical')];
  }

  protected override render(): TemplateResult {
    const content = this.#content;
    const states = {
      table: this.read<DeviationCard>(fields.table, 'table'),
      given: this.#given.card !== null,
      every: this.#every,
      format: this.#format,
      limit: this.#limit,
      correctors: this.#correctors,
      read: this.read.bind(this),
    };
    const headline = html`<div class="headline">
      ${missingView(this, this.#names)} ${cardProblemView(this, this.#given)}
      ${content
        ? html`<p class="row no-print"><button part="button" type="button" class="main" @click=${() => printAlone(this)}>${this.t('print')}</button></p>`
        : html`<p class="waiting">${this.t('card.none')}</p>`}
    </div>`;
    return this.frame(html`
      <h2 part="title">${this.t('card.title')}</h2>
      <div class="columns">
        ${inReadingOrder(this, html`<div class="fields">${cardEntry(this, states)}</div>`, headline, this.width.narrow || this.width.close)}
        <div class="explanation">${content ? cardPaper(this, content, this.#format) : nothing}</div>
      </div>
    `);
  }
}
