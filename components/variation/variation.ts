import { html, nothing } from 'lit';
import type { CSSResultGroup, TemplateResult } from 'lit';
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
import { fieldNames } from '../shared/field-names.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { outsideModelsView } from '../shared/outside-models-view.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { PlacedElement, placeFields } from '../shared/placed-element.js';
import { roseEntry, roseOf, roseUnfinished } from './rose-entry.js';
import type { RoseForm } from './rose-entry.js';
import { roseChangeField, roseField, roseVariationField, roseYearField } from './rose-fields.js';
import { answerView } from './variation-answer.js';
import { explanationView } from './variation-explanation.js';
import { variationMessages } from './variation-messages.js';
import { variationStyles } from './variation-styles.js';

const fields = {
  ...placeFields,
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
export class LubberVariation extends PlacedElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, earthFieldStyles, variationStyles];

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
    this.compute();
    return this.#result;
  }

  protected override input(name: string): FieldInput {
    // The hour hardly matters: the variation changes by minutes of arc in a year.
    return name === 'time' ? (super.input(name) ?? '00:00') : super.input(name);
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

  protected override get states() {
    const variation = valueOf(this.read(fields.roseVariation, 'roseVariation'));
    return this.readAll({ ...fields, roseChange: roseChangeField(variation) });
  }

  get #form(): RoseForm {
    if (this.roseForm === 'printed' || this.roseForm === 'parts') return this.roseForm;
    return !this.rose && this.roseVariation !== undefined ? 'parts' : 'printed';
  }

  get #rose(): ChartRose | undefined {
    return roseOf(this.#form, this.states);
  }

  get #model(): MagneticModelName | undefined {
    return magneticModels.find(({ name }) => name === this.model)?.name;
  }

  protected override compute(): void {
    this.#result = null;
    const { place, when } = this;
    if (!place || !when || this.hasUnknownWord) return;
    const [rose, model] = [this.#rose, this.#model];
    this.#result = variationReport({ place, instant: when, ...(rose ? { rose } : {}) }, model ? { model } : {});
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#result;
    const { place, when } = this;
    if (!result || !place || !when || (!result.field && !result.rose)) return null;
    return { inputs: { ...place, instant: formatInstant(when), rose: this.#rose ?? null, model: this.#model ?? null }, result };
  }

  #missing(): TemplateResult {
    const { states } = this;
    const part = (name: 'rose' | 'roseVariation' | 'roseYear' | 'roseChange', key: string) => ({ state: states[name], label: this.t(`variation.rose.${key}`), needed: false });
    const rose = this.#form === 'printed' ? [part('rose', 'text')] : [part('roseVariation', 'variation'), part('roseYear', 'year'), part('roseChange', 'change')];
    return missingView(this, [...fieldNames(this, states, { latitude: true, longitude: true, date: true, time: true }), ...rose]);
  }

  protected override render(): TemplateResult {
    const { states, when } = this;
    const result = this.#result;
    const rose = this.#rose;
    const shown = this.answer === 'shown' && result;
    return this.frame(html`
      <h2 part="title">${this.t('variation.title')}</h2>
      <div class="columns">
        <div class="fields">${placeView(this, states, fields)} ${whenView(this, states, fields)} ${roseEntry(this, this.#form, states)}</div>
        <div class="headline">
          ${shown ? answerView(this, result, rose) : nothing}
          ${result?.outside ? outsideModelsView(this, result.outside, this.#model) : nothing} ${this.#missing()}
          ${result && roseUnfinished(this.#form, states) && result.field ? html`<p class="waiting">${this.t('variation.unfinished')}</p>` : nothing}
        </div>
        <div class="explanation">${shown && when ? explanationView(this, result, rose, when) : nothing}</div>
      </div>
    `);
  }
}
