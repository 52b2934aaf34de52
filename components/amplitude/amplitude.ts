import { html, nothing } from 'lit';
import type { CSSResultGroup, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { AmplitudeObservation } from '../../core/sight/amplitude-observation.js';
import type { AmplitudeBearing, AmplitudeSight, NoAmplitude } from '../../core/sight/amplitude-result.js';
import { amplitudeBearing, amplitudeSight } from '../../core/sight/amplitude-sight.js';
import { compassKinds } from '../../core/sight/compass-kind.js';
import { bodyNamed } from '../../core/sky/body.js';
import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { answerStyles } from '../shared/answer-styles.js';
import { bodyInWords } from '../shared/body-name.js';
import { headAndSplitNames } from '../shared/compass-view.js';
import { valueOf } from '../shared/field.js';
import type { FieldInput } from '../shared/field.js';
import { fieldNames } from '../shared/field-names.js';
import { headlineView } from '../shared/headline-view.js';
import { howView } from '../shared/how-view.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { SightElement } from '../shared/sight-element.js';
import { sightStyles } from '../shared/sight-styles.js';
import { isGrave } from './amplitude-answer.js';
import { explanationView } from './amplitude-explanation.js';
import { amplitudeFields, moments } from './amplitude-fields.js';
import { amplitudeMessages } from './amplitude-messages.js';
import { planView } from './amplitude-plan.js';
import { amplitudeStyles } from './amplitude-styles.js';
import { bearingLabel, fieldsView } from './fields-view.js';
import type { Entered } from './fields-view.js';
import { NextEventButtons } from './next-event-buttons.js';
import { atHead } from './sentence-head.js';

/**
 * Compass error from a body at rising or setting: where, when, what the compass showed;
 * then the error, its split into variation and deviation, how far to trust it, and why.
 *
 * @element lubber-amplitude
 * @fires lubber-result - when what the user did led to an error: `inputs`, `result`
 * @fires lubber-record-request - when the user offers the result to a record book
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
 * @csspart answer - the error in one line
 * @csspart working - the steps of the working
 * @csspart doubt - the causes of doubt
 * @csspart cautions - what is odd about the result
 * @csspart split - what the error is made of: variation, deviation, card
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberAmplitude extends SightElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, sightStyles, amplitudeStyles];

  /** The body observed, by its almanac name. */
  @property() body = 'Sun';

  /** What was seen: `celestial`, `upper-limb`, `centre` or `lower-limb`. */
  @property() moment: HorizonMoment = 'celestial';

  /** Height of the eye above the sea, metres. */
  @property({ attribute: 'height-of-eye' }) heightOfEye?: string | number;

  /** Bearing of the body by the compass, degrees. */
  @property() bearing?: string | number;

  /** Of the altitude at the horizon, mostly its refraction, one standard deviation, degrees; 0.1 is usual, more beyond 60° of latitude. */
  @property({ attribute: 'doubt-horizon-altitude' }) doubtHorizonAltitude?: string | number;

  /** Of the position in each direction, one standard deviation, nautical miles; 1 is usual. */
  @property({ attribute: 'doubt-position' }) doubtPosition?: string | number;

  /** Of the time, one standard deviation, seconds; 5 is usual. */
  @property({ attribute: 'doubt-time' }) doubtTime?: string | number;

  protected readonly messages = amplitudeMessages;
  protected readonly fields = amplitudeFields;
  protected override readonly words = { body: (word: string) => bodyNamed(word) !== null, moment: moments, compass: compassKinds };

  #bearing: AmplitudeBearing | NoAmplitude | null = null;
  #result: AmplitudeSight | null = null;

  readonly #next = new NextEventButtons(this, () => ({
    ...this.#sought,
    bodyInWords: this.#bodyInWords,
    latitude: valueOf(this.states.latitude),
    longitude: valueOf(this.states.longitude),
    heightOfEye: valueOf(this.states.heightOfEye) ?? 0,
    after: this.when,
  }));

  /** The last result as plain data; null where there is none. */
  get result(): AmplitudeSight | null {
    this.compute();
    return this.#result;
  }

  protected override input(name: string): FieldInput {
    // A bridge at an unknown height: what the handbook's tables assume, 41 ft.
    const input = super.input(name);
    return name === 'heightOfEye' ? (input ?? 12.5) : input;
  }

  protected override get states() {
    return this.readAll(amplitudeFields);
  }

  get #sought(): { readonly body: BodyName; readonly moment: HorizonMoment } {
    return { body: bodyNamed(String(this.body ?? 'Sun')) ?? 'Sun', moment: moments.includes(this.moment) ? this.moment : 'celestial' };
  }

  /** The body as it stands in a sentence. */
  get #bodyInWords(): string {
    return this.unknownWord('body') || bodyInWords(this, this.#sought.body);
  }

  /** What is looked for, where and when; null while something is missing. */
  get #seen(): Omit<AmplitudeObservation, 'compassBearing' | 'compass'> | null {
    const { place, when } = this;
    const heightOfEye = valueOf(this.states.heightOfEye);
    return place && when && heightOfEye !== undefined && !this.hasUnknownWord ? { ...this.#sought, ...place, instant: when, heightOfEye } : null;
  }

  protected override compute(): void {
    [this.#bearing, this.#result] = [null, null];
    const seen = this.#seen;
    if (!seen) return;
    const compassBearing = valueOf(this.states.bearing);
    if (compassBearing === undefined || this.splitRefused) {
      this.#bearing = amplitudeBearing(seen);
      return;
    }
    const sight = amplitudeSight({ ...seen, ...this.reading, ...this.cardHere, compassBearing });
    this.#bearing = sight;
    this.#result = sight.determined ? sight : null;
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#result;
    if (!result) return null;
    const { states } = this;
    return {
      inputs: { ...this.#sought, ...this.sightInputs, heightOfEye: valueOf(states.heightOfEye) ?? null, bearing: valueOf(states.bearing) ?? null },
      result,
    };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ method: 'amplitude', ...detail.inputs, result: detail.result });
  }

  get #entered(): Entered {
    return { ...this.#sought, states: this.states, bodyInWords: this.#bodyInWords, gyro: this.gyro, understood: !this.hasUnknownWord };
  }

  #missing(): TemplateResult {
    const { states, gyro } = this;
    return missingView(this, [
      ...fieldNames(this, states, { latitude: true, longitude: true, date: true, time: true }),
      { state: states.bearing, label: bearingLabel(this, this.#entered), needed: true },
      ...headAndSplitNames(this, gyro, states),
      ...fieldNames(this, states, { heightOfEye: true }),
    ]);
  }

  #plan(bearing: AmplitudeBearing): TemplateResult | typeof nothing {
    const seen = this.#seen;
    return seen ? planView(this, { seen, bearing, body: atHead(this.#bodyInWords), known: { ...this.reading, ...this.cardHere } }) : nothing;
  }

  #headline(): TemplateResult | typeof nothing {
    const [bearing, result] = [this.#bearing, this.#result];
    const shown = this.answer === 'shown';
    if (result) return shown ? headlineView(this, result, { heading: valueOf(this.states.heading), isGrave }) : nothing;
    if (bearing && !bearing.determined) {
      return html`<p class="waiting wrong">${this.t(`amplitude.none.${bearing.reason}`, { body: atHead(this.#bodyInWords) })}</p>`;
    }
    return html`${bearing && shown ? this.#plan(bearing) : nothing} ${this.#missing()} ${bearing ? nothing : howView(this, 'amplitude.how')}`;
  }

  protected override render(): TemplateResult {
    const result = this.#result;
    const { states } = this;
    return this.frame(html`
      <h2 part="title">${this.t('amplitude.title')}</h2>
      <div class="columns">
        ${fieldsView(this, this.#entered, this.hasUnknownWord ? nothing : this.#next.view())}
        <div class="headline">${this.#headline()}</div>
        <div class="explanation">
          ${result && this.answer === 'shown'
            ? explanationView(this, result, valueOf(states.bearing) ?? 0, this.#bodyInWords, states, () => this.#record())
            : nothing}
        </div>
      </div>
    `);
  }
}
