import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { ChartRose } from '../../core/field/charted-variation.js';
import { magneticModels } from '../../core/field/magnetic-models.js';
import type { MagneticModelName } from '../../core/field/magnetic-models.js';
import { variationReport } from '../../core/field/variation-report.js';
import type { VariationReport } from '../../core/field/variation-report.js';
import { formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { earthFieldStyles } from '../shared/earth-field-styles.js';
import { valueOf } from '../shared/field.js';
import type { FieldInput } from '../shared/field.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { outsideModelsView } from '../shared/outside-models-view.js';
import { combinedInstant, placeView, splitInstant, whenView } from '../shared/place-and-time.js';
import { dateField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';
import { roseEntry, roseOf, roseUnfinished } from './rose-entry.js';
import type { RoseForm } from './rose-entry.js';
import { roseChangeField, roseField, roseVariationField, roseYearField } from './rose-fields.js';
import { answerView } from './variation-answer.js';
import { explanationView } from './variation-explanation.js';
import { variationMessages } from './variation-messages.js';
import { variationStyles } from './variation-styles.js';

const fields = {
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
  rose: roseField,
  roseVariation: roseVariationField,
  roseYear: roseYearField,
  roseChange: roseChangeField(undefined),
};

/**
 * The variation at a place and date: the World Magnetic Model beside the chart's rose, the
 * difference and what to do about it; the forces of the Earth's field, drawn to scale.
 *
 * @element lubber-variation
 * @fires lubber-result - when what the user did led to a variation: `inputs`, `result`
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
 * @csspart answer - the variation in one line
 * @csspart split - the chart's variation, the difference and the annual changes
 * @csspart elements - the table of the elements of the field
 * @csspart working - the steps of the working
 * @csspart cautions - what is odd about the result
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberVariation extends LubberElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, earthFieldStyles, variationStyles];

  /** Degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** The whole instant, ISO 8601 UTC; fills date and time. */
  @property() instant?: string | Date;

  /** Day, UTC. */
  @property() date?: string;

  /** Time of day, UTC; left empty, 0 h. */
  @property() time?: string;

  /** The rose as the chart prints it, `4°15′W 2015 (8′E)`. */
  @property() rose?: string;

  /** `printed` or `parts`: how the rose is entered. */
  @property({ attribute: 'rose-form' }) roseForm?: RoseForm;

  /** Variation of the rose, degrees, east positive. */
  @property({ attribute: 'rose-variation' }) roseVariation?: string | number;

  /** Year of the rose; a whole one is its 1 January. */
  @property({ attribute: 'rose-year' }) roseYear?: string | number;

  /** Annual change, minutes of arc a year, east positive, or text such as `8′E`. */
  @property({ attribute: 'rose-change' }) roseChange?: string | number;

  /** `WMM2025`, `WMM2020`, `WMM2015v2` or `WMM2015`; the newest that holds for the date unless given. */
  @property() model?: string;

  protected readonly messages = variationMessages;
  protected readonly fields = fields;
  protected override readonly words = { roseForm: ['printed', 'parts'], model: magneticModels.map(({ name }) => name) };

  #result: VariationReport | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): VariationReport | null {
    this.#compute();
    return this.#result;
  }

  protected override input(name: string): FieldInput {
    // The hour hardly matters: the variation changes by minutes of arc in a year.
    return name === 'time' ? (super.input(name) ?? '00:00') : super.input(name);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.#compute();
  }

  /** Takes what is entered in one form of the rose over into the other. */
  override change(name: string, value: FieldInput): void {
    const rose = this.#rose;
    if (name === 'roseForm' && rose) {
      this.rose = roseField.write(rose);
      this.roseVariation = roseVariationField.write(rose.variation);
      this.roseYear = roseYearField.write(rose.year);
      this.roseChange = fields.roseChange.write(rose.annualChangeMinutes);
    }
    super.change(name, value);
  }

  get #state() {
    const roseVariation = this.read(fields.roseVariation, 'roseVariation');
    return {
      latitude: this.read(fields.latitude, 'latitude'),
      longitude: this.read(fields.longitude, 'longitude'),
      date: this.read(fields.date, 'date'),
      time: this.read(fields.time, 'time'),
      rose: this.read(fields.rose, 'rose'),
      roseVariation,
      roseYear: this.read(fields.roseYear, 'roseYear'),
      roseChange: this.read(roseChangeField(valueOf(roseVariation)), 'roseChange'),
    };
  }

  get #form(): RoseForm {
    if (this.roseForm === 'printed' || this.roseForm === 'parts') return this.roseForm;
    return !this.rose && this.roseVariation !== undefined ? 'parts' : 'printed';
  }

  get #rose(): ChartRose | undefined {
    return roseOf(this.#form, this.#state);
  }

  get #model(): MagneticModelName | undefined {
    return magneticModels.find(({ name }) => name === this.model)?.name;
  }

  #compute(): void {
    this.#result = null;
    const state = this.#state;
    const latitude = valueOf(state.latitude);
    const longitude = valueOf(state.longitude);
    const instant = combinedInstant(state.date, state.time);
    if (latitude === undefined || longitude === undefined || !instant || this.hasUnknownWord) return;
    const [rose, model] = [this.#rose, this.#model];
    this.#result = variationReport({ place: { latitude, longitude }, instant, ...(rose ? { rose } : {}) }, model ? { model } : {});
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#result;
    const state = this.#state;
    const instant = combinedInstant(state.date, state.time);
    if (!result || !instant || (!result.field && !result.rose)) return null;
    return {
      inputs: {
        latitude: valueOf(state.latitude),
        longitude: valueOf(state.longitude),
        instant: formatInstant(instant),
        rose: this.#rose ?? null,
        model: this.#model ?? null,
      },
      result,
    };
  }

  #missing(): TemplateResult {
    const state = this.#state;
    const needed = (name: 'latitude' | 'longitude' | 'date' | 'time') => ({ state: state[name], label: this.t(`sight.${name}`), needed: true });
    const part = (name: 'roseVariation' | 'roseYear' | 'roseChange', key: string) => ({ state: state[name], label: this.t(key), needed: false });
    const rose =
      this.#form === 'printed'
        ? [{ state: state.rose, label: this.t('variation.rose.text'), needed: false }]
        : [part('roseVariation', 'variation.rose.variation'), part('roseYear', 'variation.rose.year'), part('roseChange', 'variation.rose.change')];
    return missingView(this, [needed('latitude'), needed('longitude'), needed('date'), needed('time'), ...rose]);
  }

  protected override render(): TemplateResult {
    const state = this.#state;
    const result = this.#result;
    const instant = combinedInstant(state.date, state.time);
    const rose = this.#rose;
    const shown = this.answer === 'shown' && result;
    return this.frame(html`
      <h2 part="title">${this.t('variation.title')}</h2>
      <div class="columns">
        <div class="fields">${placeView(this, state, fields)} ${whenView(this, state, fields)} ${roseEntry(this, this.#form, state)}</div>
        <div class="headline">
          ${shown ? answerView(this, result, rose) : nothing}
          ${result?.outside ? outsideModelsView(this, result.outside, this.#model) : nothing} ${this.#missing()}
          ${result && roseUnfinished(this.#form, state) && result.field ? html`<p class="waiting">${this.t('variation.unfinished')}</p>` : nothing}
        </div>
        <div class="explanation">${shown && instant ? explanationView(this, result, rose, instant) : nothing}</div>
      </div>
    `);
  }
}
