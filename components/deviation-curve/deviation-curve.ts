import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { answerStyles } from '../shared/answer-styles.js';
import { ChartController } from '../shared/chart-controller.js';
import { chartStyles } from '../shared/chart-styles.js';
import { choiceView } from '../shared/choice-view.js';
import { headingAt } from '../shared/deviation-chart.js';
import { deviationChartStyles } from '../shared/deviation-chart-styles.js';
import { deviationTableField, deviationTableView } from '../shared/deviation-table-field.js';
import { deviationTableStyles } from '../shared/deviation-table-styles.js';
import { valueOf } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { formatBearing } from '../shared/figures.js';
import { limitCodes, limitNamed, limitView } from '../shared/limit-view.js';
import type { LimitCode } from '../shared/limit-view.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { printAlone } from '../shared/print-alone.js';
import { sliderStyles } from '../shared/slider-styles.js';
import { bearingField } from '../shared/trade-fields.js';
import { curveInput } from './curve-input.js';
import { curveMessages } from './curve-messages.js';
import { readoutView } from './curve-readout.js';
import { curveState } from './curve-result.js';
import type { CurveResult, CurveState } from './curve-result.js';
import { curveStyles } from './curve-styles.js';
import { curveTable } from './curve-table.js';
import { answerView, diagramView, footView, pictureView } from './curve-views.js';
import type { NamedCard } from './given-cards.js';
import type { CurvePoint } from './given-points.js';
import { problemsView, tooFewView } from './problems-view.js';

const fields = { table: deviationTableField, heading: bearingField('C') };

/** Properties that move nothing but the cursor or what is folded away. */
const light = new Set<PropertyKey>(['heading', 'tableShown', 'announcement', 'settled', 'theme', 'working', 'answer']);

/**
 * One or several curves of deviation with the readings behind them, the band of doubt, the
 * limit, values under the cursor, a table, and the diagonal diagram for conversion by hand.
 *
 * @element lubber-deviation-curve
 * @fires lubber-result - when what the user did led to a curve: `inputs`, `result`
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
 * @csspart answer - the largest deviation in one line
 * @csspart diagram - the diagram for conversion by hand
 * @csspart cautions - what is odd about the curve
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberDeviationCurve extends LubberElement {
  static override styles: CSSResultGroup = [longTextStyles, sliderStyles, sharedStyles, answerStyles, deviationTableStyles, deviationChartStyles, chartStyles, curveStyles];

  /** A deviation card as plain data; as attribute its JSON. */
  @property() card?: DeviationCard | string;

  /** The card before an adjustment, drawn behind. */
  @property({ attribute: 'before-card' }) beforeCard?: DeviationCard | string;

  /** Several cards by name, the one in use first: `[{ name, card }]`; as attribute its JSON. */
  @property() cards?: readonly NamedCard[] | string;

  /** Readings of a swing: `[{ heading, deviation, struck?, sigma? }]`; as attribute its JSON. */
  @property() points?: readonly CurvePoint[] | string;

  /** Deviations as text, a heading and a deviation a line. */
  @property() table?: string;

  /** What the text holds: a `card` or `readings`. */
  @property({ attribute: 'table-is' }) tableIs: 'card' | 'readings' = 'card';

  /** How a curve is laid through readings: `approximate` or `exact`. */
  @property() model: 'approximate' | 'exact' = 'approximate';

  /** Code of the limit: `flag-five`, `after-adjustment`, `in-service` or `panama-canal`. */
  @property() limit: LimitCode = 'flag-five';

  /** Heading under the cursor, by compass, degrees. */
  @property() heading?: string | number;

  @state() private tableShown = false;

  protected readonly messages = curveMessages;
  protected readonly fields = fields;
  protected override readonly words = { tableIs: ['card', 'readings'], model: ['approximate', 'exact'], limit: limitCodes };

  #state: CurveState | null = null;

  readonly #chart: ChartController = new ChartController(this, {
    container: () => this.renderRoot.querySelector<HTMLElement>('.live'),
    content: () => this.#state?.content ?? null,
    cursor: () => this.#heading,
    onCursor: (heading) => (this.heading = heading),
  });

  /** The last result as plain data; null where there is no curve. */
  get result(): CurveResult | null {
    this.#compute();
    return this.#state?.result ?? null;
  }

  get #heading(): number {
    return valueOf(this.read(fields.heading, 'heading')) ?? 0;
  }

  get #limit(): DeviationLimit {
    return limitNamed(this.limit);
  }

  get #input() {
    return curveInput(this.t, {
      card: this.card,
      before: this.beforeCard,
      cards: this.cards,
      points: this.points,
      table: valueOf(this.read(fields.table, 'table')) ?? null,
      tableIs: this.tableIs === 'readings' ? 'readings' : 'card',
      shipCard: this.ship?.card ?? null,
      model: this.model === 'exact' ? 'exact' : 'approximate',
      limit: this.#limit,
    });
  }

  #compute(): void {
    this.#state = this.hasUnknownWord ? null : curveState(this.#input);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const names = [...(changed as ReadonlyMap<PropertyKey, unknown>).keys()];
    if (this.#state && names.length > 0 && names.every((name) => light.has(name))) return;
    this.#compute();
  }

  protected override resultDetail() {
    if (!this.#state) return null;
    return { inputs: { heading: this.#heading, limit: this.#limit.code, model: this.model }, result: this.#state.result };
  }

  readonly #onPointer = (event: PointerEvent): void => {
    const heading = headingAt(event);
    if (heading !== null) this.heading = heading;
  };

  get #names() {
    return [
      { state: this.read<DeviationCard>(fields.table, 'table'), label: this.t('curve.entry'), needed: false },
      { state: this.read(fields.heading, 'heading'), label: this.t('curve.heading'), needed: false },
    ];
  }

  #fieldsView(): TemplateResult {
    const readings = this.tableIs === 'readings' || this.points !== undefined;
    return html`<div class="fields">
      ${deviationTableView(this, 'table', this.read<DeviationCard>(fields.table, 'table'), this.t('curve.entry'), this.#state !== null)}
      ${choiceView(this, 'tableIs', this.t('curve.tableIs'), this.tableIs === 'readings' ? 'readings' : 'card', [
        { value: 'card', label: this.t('curve.tableIs.card') },
        { value: 'readings', label: this.t('curve.tableIs.readings') },
      ])}
      ${readings
        ? choiceView(this, 'model', this.t('curve.model'), this.model === 'exact' ? 'exact' : 'approximate', [
            { value: 'approximate', label: this.t('curve.model.approximate') },
            { value: 'exact', label: this.t('curve.model.exact') },
          ])
        : nothing}
      ${limitView(this, this.#limit)}
      ${fieldView(this, 'heading', fields.heading, this.read(fields.heading, 'heading'), { label: this.t('curve.heading'), placeholder: '000' })}
    </div>`;
  }

  #curveView(state: CurveState): TemplateResult {
    const heading = this.#heading;
    return html`${pictureView(this, state, heading, this.#chart.ready, this.#onPointer)}
      <div class="slider no-print">
        <input part="input"
          id="cursor"
          type="range"
          min="0"
          max="359"
          step="1"
          dir="ltr"
          aria-label=${this.t('curve.slider')}
          aria-valuetext=${formatBearing(heading, 0)}
          .defaultValue=${String(Math.round(heading) % 360)}
          @input=${(event: Event) => (this.heading = Number((event.target as HTMLInputElement).value))}
        />
      </div>
      ${readoutView(this, state, heading)}
      <p class="row no-print">
        <button part="button" type="button" aria-expanded=${this.tableShown ? 'true' : 'false'} @click=${() => (this.tableShown = !this.tableShown)}>
          ${this.t(this.tableShown ? 'curve.table.hide' : 'curve.table.show')}
        </button>
        <button part="button" type="button" @click=${() => printAlone(this)}>${this.t('print')}</button>
      </p>
      <div class="scroll ${this.tableShown ? '' : 'folded'}" role="group" aria-label=${this.t('curve.table')}>${curveTable(this, state)}</div>
      ${diagramView(this, state, heading)} ${footView(this, state)}`;
  }

  protected override render(): TemplateResult {
    const state = this.answer === 'shown' ? this.#state : null;
    return this.frame(html`
      <h2 part="title">${this.t('curve.title')}</h2>
      <div class="columns">
        ${this.#fieldsView()}
        <div class="headline">${missingView(this, this.#names)} ${problemsView(this, this.#input)} ${state ? answerView(this, state) : nothing} ${this.#state ? nothing : html`${tooFewView(this, this.#input)} ${this.#howView()}`}</div>
        <div class="explanation">${state ? this.#curveView(state) : nothing}</div>
      </div>
    `);
  }

  #howView(): TemplateResult {
    return html`<ol class="how">
      ${[1, 2, 3].map((step) => html`<li>${this.t(`curve.how.${step}`)}</li>`)}
    </ol>`;
  }
}

