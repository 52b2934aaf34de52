import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { reckonings } from '../../core/sight/chain-steps.js';
import type { Reckoning } from '../../core/sight/chain-steps.js';
import { answerStyles } from '../shared/answer-styles.js';
import { deviationTableStyles } from '../shared/deviation-table-styles.js';
import { valueOf } from '../shared/field.js';
import type { GivenCard } from '../shared/given-card.js';
import { readGivenCard } from '../shared/given-card.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { convert } from '../../core/sight/convert.js';
import type { Conversion, ConversionInput, ConversionKind } from '../../core/sight/conversion.js';
import { conversionFields } from './conversion-fields.js';
import { conversionMessages } from './conversion-messages.js';
import { conversionStyles } from './conversion-styles.js';
import { explanationView, headlineView } from './conversion-views.js';
import { fieldsView } from './fields-view.js';
import { chosenSource, deviationFrom, deviationSources } from './deviation-source.js';
import type { DeviationSource, SourceStates } from './deviation-source.js';
import { threeCompassesView, variationInUse } from './three-compasses-view.js';

/**
 * A course or a bearing by true, magnetic, compass and gyro reckoning, from any of them to
 * the rest, with every step; the deviation is always that of the ship's head.
 *
 * @element lubber-conversion
 * @fires lubber-result - when what the user did led to a conversion: `inputs`, `result`
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
 * @csspart answer - the direction asked for in one line
 * @csspart working - the steps of the working
 * @csspart cautions - what is odd about the result
 * @csspart look - one look at three compasses
 * @csspart split - what was laid on or taken off on the way
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberConversion extends LubberElement {
  static override styles: CSSResultGroup = [longTextStyles, sharedStyles, answerStyles, deviationTableStyles, conversionStyles];

  /** `course` or `bearing`. */
  @property() kind: ConversionKind = 'course';

  /** The course, or for a bearing the ship's head, degrees. */
  @property() heading?: string | number;

  /** By which north the heading is given: `true`, `magnetic`, `compass` or `gyro`. */
  @property({ attribute: 'heading-by' }) headingBy: Reckoning = 'compass';

  /** The bearing, degrees. */
  @property() bearing?: string | number;

  /** By which north the bearing is given. */
  @property({ attribute: 'bearing-by' }) bearingBy: Reckoning = 'compass';

  /** Degrees, east positive, or text such as `3.2W`. */
  @property() variation?: string | number;

  /** Where the deviation comes from: `value`, `card`, `table` or `coefficients`; else whichever is there. */
  @property({ attribute: 'deviation-source' }) source?: DeviationSource;

  /** One deviation, degrees, east positive, or text such as `1.5E`. */
  @property() deviation?: string | number;

  /** A table of deviations as text, a heading and a deviation a line. */
  @property() table?: string;

  /** A deviation card as plain data; as attribute its JSON. */
  @property() card?: DeviationCard | string;

  /** Approximate coefficient A, degrees, east positive. */
  @property({ attribute: 'coefficient-a' }) coefficientA?: string | number;

  /** Approximate coefficient B, degrees, east positive. */
  @property({ attribute: 'coefficient-b' }) coefficientB?: string | number;

  /** Approximate coefficient C, degrees, east positive. */
  @property({ attribute: 'coefficient-c' }) coefficientC?: string | number;

  /** Approximate coefficient D, degrees, east positive. */
  @property({ attribute: 'coefficient-d' }) coefficientD?: string | number;

  /** Approximate coefficient E, degrees, east positive. */
  @property({ attribute: 'coefficient-e' }) coefficientE?: string | number;

  /** Degrees, east positive: true less gyro. */
  @property({ attribute: 'gyro-error' }) gyroError?: string | number;

  /** Amount of leeway, degrees. */
  @property() leeway?: string | number;

  /** Where the wind comes from, degrees true. */
  @property() wind?: string | number;

  /** What the user found by hand, to be checked against the result. */
  @property({ attribute: 'by-hand' }) byHand?: string | number;

  /** Speed over the ground, knots; for the speed error of the gyro. */
  @property() speed?: string | number;

  /** Degrees, north positive; for the speed error of the gyro. */
  @property() latitude?: string | number;

  /** Head by gyro at one look at all compasses, degrees. */
  @property({ attribute: 'look-gyro' }) lookGyro?: string | number;

  /** Head by the standard compass at the same look, degrees. */
  @property({ attribute: 'look-standard' }) lookStandard?: string | number;

  /** Head by the steering compass at the same look, degrees. */
  @property({ attribute: 'look-steering' }) lookSteering?: string | number;

  protected readonly messages = conversionMessages;
  protected readonly fields = conversionFields;
  protected override readonly words = { kind: ['course', 'bearing'], headingBy: reckonings, bearingBy: reckonings, source: deviationSources };

  #input: ConversionInput | null = null;
  #result: Conversion | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): Conversion | null {
    this.#compute();
    return this.#result;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#compute();
  }

  get #given(): GivenCard {
    const own = readGivenCard(this.card);
    return own.card || own.problem ? own : { card: this.ship?.card ?? null, problem: null };
  }

  /** All fields as they stand; views take what they show. */
  get #state() {
    const number = (name: Exclude<keyof typeof conversionFields, 'table'>) => this.read<number>(conversionFields[name], name);
    const given = this.#given;
    const sources: SourceStates = {
      deviation: number('deviation'),
      table: this.read<DeviationCard>(conversionFields.table, 'table'),
      coefficients: (['coefficientA', 'coefficientB', 'coefficientC', 'coefficientD', 'coefficientE'] as const).map(number),
      card: given.card,
    };
    return {
      kind: this.kind === 'bearing' ? ('bearing' as const) : ('course' as const),
      heading: number('heading'),
      headingBy: reckoningOf(this.headingBy),
      bearing: number('bearing'),
      bearingBy: reckoningOf(this.bearingBy),
      variation: number('variation'),
      modelVariation: this.ship?.modelVariation ?? null,
      gyroError: number('gyroError'),
      leeway: number('leeway'),
      wind: number('wind'),
      byHand: number('byHand'),
      speed: number('speed'),
      latitude: number('latitude'),
      lookGyro: number('lookGyro'),
      lookStandard: number('lookStandard'),
      lookSteering: number('lookSteering'),
      given,
      sources,
      source: chosenSource(this.source, sources),
    };
  }

  #compute(): void {
    const state = this.#state;
    this.#input = null;
    this.#result = null;
    const heading = valueOf(state.heading);
    const bearing = valueOf(state.bearing);
    const refused = [state.variation, state.gyroError, state.sources.deviation].some(({ state: what }) => what === 'refused');
    if (this.hasUnknownWord || heading === undefined || (state.kind === 'bearing' && bearing === undefined) || refused) return;
    const [amount, from] = [valueOf(state.leeway), valueOf(state.wind)];
    // A true course is the one to make good: nobody can steer it before the leeway and its side are known.
    if (state.kind === 'course' && state.headingBy === 'true' && (state.leeway.state === 'refused' || (amount && from === undefined))) return;
    this.#input = {
      kind: state.kind,
      heading: { value: heading, by: state.headingBy },
      bearing: state.kind === 'bearing' && bearing !== undefined ? { value: bearing, by: state.bearingBy } : undefined,
      variation: variationInUse(state) ?? null,
      zone: state.modelVariation?.zone ?? null,
      modelledVariation: state.modelVariation,
      deviation: deviationFrom(state.source, state.sources),
      cardBeside: state.given.card ?? valueOf(state.sources.table) ?? null,
      gyroError: valueOf(state.gyroError) ?? null,
      wind: amount === undefined || from === undefined ? null : { amount, from },
    };
    const { variation, deviation, gyroError } = this.#input;
    if (variation !== null || deviation !== null || gyroError !== null) this.#result = convert(this.#input);
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    if (!this.#input || !this.#result) return null;
    const { kind, heading, bearing, variation, deviation, gyroError, wind } = this.#input;
    return { inputs: { kind, heading, bearing: bearing ?? null, variation, deviation, gyroError, wind }, result: this.#result };
  }

  protected override render(): TemplateResult {
    const state = this.#state;
    return this.frame(html`
      <h2 part="title">${this.t('conversion.title')}</h2>
      <div class="columns">
        <div class="fields">${fieldsView(this, state, this.#result?.values.true ?? null)}</div>
        <div class="headline">${headlineView(this, state, this.#input, this.#result)}</div>
        <div class="explanation">
          ${this.#result && this.answer === 'shown' ? explanationView(this, this.#result) : nothing}
          ${threeCompassesView(this, state)}
        </div>
      </div>
    `);
  }
}

const reckoningOf = (text: string): Reckoning => reckonings.find((name) => name === text) ?? 'compass';
