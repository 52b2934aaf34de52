import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { amplitudeBearing, amplitudeSight } from '../../core/sight/amplitude-sight.js';
import type { AmplitudeBearing, AmplitudeSight, NoAmplitude } from '../../core/sight/amplitude-result.js';
import type { AmplitudeObservation, CompassKind } from '../../core/sight/amplitude-observation.js';
import { bodyNamed } from '../../core/sky/body.js';
import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { bodyInWords } from '../shared/body-name.js';
import { bodySelect } from '../shared/body-select.js';
import { cardDeviationOn } from '../shared/card-deviation.js';
import { choiceView } from '../shared/choice-view.js';
import { compassChoice, compassWords, headAndSplitView } from '../shared/compass-view.js';
import { doubtFields, supposedIn } from '../shared/doubt-fields.js';
import { valueOf } from '../shared/field.js';
import type { FieldInput, StatesOf } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import type { FieldName } from '../shared/missing-view.js';
import { combinedInstant, placeView, splitInstant, whenView } from '../shared/place-and-time.js';
import { bearingField, dateField, errorField, heightOfEyeField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';
import { amplitudeMessages } from './amplitude-messages.js';
import { answerView } from './amplitude-answer.js';
import { planView } from './amplitude-plan.js';
import { amplitudeRecord } from './amplitude-record.js';
import { expectedBearingText } from './expected-bearing.js';
import { explanationView } from './amplitude-explanation.js';
import { momentRule } from './moment-rule.js';
import { nextEvent } from './next-event.js';

const moments: readonly HorizonMoment[] = ['celestial', 'upper-limb', 'centre', 'lower-limb'];

const fields = {
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
  heightOfEye: heightOfEyeField,
  bearing: bearingField('C'),
  heading: bearingField('C'),
  variation: errorField,
  cardDeviation: errorField,
  doubtReading: doubtFields.doubtReading,
  doubtHorizonAltitude: doubtFields.doubtHorizonAltitude,
  doubtPosition: doubtFields.doubtPosition,
  doubtTime: doubtFields.doubtTime,
};

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
export class LubberAmplitude extends LubberElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles];

  /** The body observed, by its almanac name. */
  @property() body = 'Sun';

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

  /** What was seen: `celestial`, `upper-limb`, `centre` or `lower-limb`. */
  @property() moment: HorizonMoment = 'celestial';

  /** Height of the eye above the sea, metres. */
  @property({ attribute: 'height-of-eye' }) heightOfEye?: string | number;

  /** `magnetic` or `gyro`. */
  @property() compass: CompassKind = 'magnetic';

  /** Bearing of the body by the compass, degrees. */
  @property() bearing?: string | number;

  /** Ship's head by the same compass, degrees. */
  @property() heading?: string | number;

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** What the deviation card says for this heading, degrees, east positive. */
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;

  /** Of a bearing read from the compass, one standard deviation, degrees; 0.5 is usual. */
  @property({ attribute: 'doubt-reading' }) doubtReading?: string | number;

  /** Of the altitude at the horizon, mostly its refraction, one standard deviation, degrees; 0.1 is usual, more beyond 60° of latitude. */
  @property({ attribute: 'doubt-horizon-altitude' }) doubtHorizonAltitude?: string | number;

  /** Of the position in each direction, one standard deviation, nautical miles; 1 is usual. */
  @property({ attribute: 'doubt-position' }) doubtPosition?: string | number;

  /** Of the time, one standard deviation, seconds; 5 is usual. */
  @property({ attribute: 'doubt-time' }) doubtTime?: string | number;

  protected readonly messages = amplitudeMessages;
  protected readonly fields = fields;
  protected override readonly words = { body: (word: string) => bodyNamed(word) !== null, moment: moments, compass: compassWords };

  #bearing: AmplitudeBearing | NoAmplitude | null = null;
  #result: AmplitudeSight | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): AmplitudeSight | null {
    this.#compute();
    return this.#result;
  }

  protected override input(name: string): FieldInput {
    // A bridge at an unknown height: what the handbook's tables assume, 41 ft.
    const input = super.input(name);
    return name === 'heightOfEye' ? (input ?? 12.5) : input;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.#compute();
  }

  get #state() {
    return this.readAll(fields);
  }

  get #body(): BodyName {
    return bodyNamed(String(this.body ?? 'Sun')) ?? 'Sun';
  }

  get #moment(): HorizonMoment {
    return moments.includes(this.moment) ? this.moment : 'celestial';
  }

  get #compass(): CompassKind {
    return this.compass === 'gyro' ? 'gyro' : 'magnetic';
  }

  /** As typed, or by the ship's card for the heading. */
  #cardDeviation(): number | undefined {
    const state = this.#state;
    return valueOf(state.cardDeviation) ?? (this.#compass === 'gyro' ? undefined : cardDeviationOn(this.ship, valueOf(state.heading)));
  }

  /** What is looked for, where and when; null while something is missing. */
  #seen(state: StatesOf<typeof fields>): Omit<AmplitudeObservation, 'compassBearing' | 'compass'> | null {
    const latitude = valueOf(state.latitude);
    const longitude = valueOf(state.longitude);
    const heightOfEye = valueOf(state.heightOfEye);
    const instant = combinedInstant(state.date, state.time);
    if (latitude === undefined || longitude === undefined || heightOfEye === undefined || !instant || this.hasUnknownWord) return null;
    return { body: this.#body, latitude, longitude, instant, moment: this.#moment, heightOfEye };
  }

  #compute(): void {
    this.#bearing = null;
    this.#result = null;
    const state = this.#state;
    const seen = this.#seen(state);
    if (!seen) return;
    const compassBearing = valueOf(state.bearing);
    // A gyro shows no such fields: what was left in them cannot hold its answer back.
    const refused = this.#compass === 'magnetic' && [state.variation, state.cardDeviation].some((field) => field.state === 'refused');
    if (compassBearing === undefined || refused) {
      this.#bearing = amplitudeBearing(seen);
      return;
    }
    const variation = valueOf(state.variation);
    const cardDeviation = this.#cardDeviation();
    const sight = amplitudeSight({
      ...seen,
      compassBearing,
      compass: this.#compass,
      doubts: supposedIn(state),
      ...(variation === undefined ? {} : { variation }),
      ...(cardDeviation === undefined ? {} : { cardDeviation }),
    });
    this.#bearing = sight;
    this.#result = sight.determined ? sight : null;
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#result;
    const state = this.#state;
    const instant = combinedInstant(state.date, state.time);
    if (!result || !instant) return null;
    return {
      inputs: {
        body: this.#body,
        latitude: valueOf(state.latitude),
        longitude: valueOf(state.longitude),
        instant: formatInstant(instant),
        moment: this.#moment,
        heightOfEye: valueOf(state.heightOfEye),
        compass: this.#compass,
        bearing: valueOf(state.bearing),
        heading: valueOf(state.heading) ?? null,
        variation: valueOf(state.variation) ?? null,
        cardDeviation: valueOf(state.cardDeviation) ?? null,
        doubts: supposedIn(state),
      },
      result,
    };
  }

  /** The body as it stands in a sentence. */
  get #bodyInWords(): string {
    return this.unknownWord('body') || bodyInWords(this, this.#body);
  }

  #next(event: 'rising' | 'setting'): void {
    const state = this.#state;
    const outcome = nextEvent(this.t, {
      body: this.#body,
      bodyInWords: this.#bodyInWords,
      latitude: valueOf(state.latitude),
      longitude: valueOf(state.longitude),
      heightOfEye: valueOf(state.heightOfEye) ?? 0,
      moment: this.#moment,
      event,
      after: combinedInstant(state.date, state.time),
    });
    this.say(outcome.said);
    if (outcome.instant) this.#take(outcome.instant);
    this.#found = { said: outcome.said, question: this.#nextQuestion };
  }

  #take(instant: Date): void {
    this.change('date', formatInstant(instant).slice(0, 10));
    this.change('time', formatInstant(instant).slice(11, 19));
  }

  /** The time of the plan is taken over; the button has gone with it, so the focus stays at the time. */
  #takePlanned(instant: Date, said: string): void {
    this.#take(instant);
    this.say(said);
    this.renderRoot.querySelector<HTMLElement>('#time')?.focus();
  }

  /** What was found of the next rising or setting, and what it was found for. */
  #found = { said: '', question: '' };

  get #nextQuestion(): string {
    const { latitude, longitude, heightOfEye, date, time } = this.#state;
    return [this.#body, this.#moment, ...[latitude, longitude, heightOfEye, date, time].map(({ text }) => text)].join(' ');
  }

  /** The way to the next rising or setting, unless the host has fixed when. */
  #nextView(): TemplateResult | typeof nothing {
    if (this.isLocked('date') || this.isLocked('time') || this.hasUnknownWord) return nothing;
    const { said, question } = this.#found;
    return html`<div class="row field">
      <button part="button" type="button" @click=${() => this.#next('rising')}>${this.t('amplitude.next.rising')}</button>
      <button part="button" type="button" @click=${() => this.#next('setting')}>${this.t('amplitude.next.setting')}</button>
      ${said && question === this.#nextQuestion ? html`<p class="hint" aria-hidden="true">${said}</p>` : nothing}
    </div>`;
  }

  /** What is read at every sight stands first and near the answer; moment and height of eye seldom change. */
  #fieldsView(): TemplateResult {
    const state = this.#state;
    const gyro = this.#compass === 'gyro';
    const body = this.#bodyInWords;
    return html`<div class="fields">
      ${bodySelect(this, this.#body)}
      ${placeView(this, state, fields)}
      ${whenView(this, state, fields)}
      ${this.#nextView()}
      ${compassChoice(this, gyro)}
      ${fieldView(this, 'bearing', bearingField(gyro ? 'G' : 'C'), state.bearing, { label: this.t(gyro ? 'sight.bearing.gyro' : 'sight.bearing', { body }) })}
      ${headAndSplitView(this, gyro, state)}
      ${choiceView(
        this,
        'moment',
        this.t('amplitude.moment'),
        this.#moment,
        moments.map((value) => ({ value, label: this.t(`amplitude.moment.${value}`) })),
      )}
      ${this.hasUnknownWord ? nothing : momentRule(this, this.#body, this.#moment, valueOf(state.heightOfEye))}
      ${fieldView(this, 'heightOfEye', fields.heightOfEye, state.heightOfEye, { label: this.t('sight.heightOfEye') })}
    </div>`;
  }

  #missing(): TemplateResult {
    const state = this.#state;
    const labels: FieldName[] = [
      { state: state.latitude, label: this.t('sight.latitude'), needed: true },
      { state: state.longitude, label: this.t('sight.longitude'), needed: true },
      { state: state.date, label: this.t('sight.date'), needed: true },
      { state: state.time, label: this.t('sight.time'), needed: true },
      { state: state.heightOfEye, label: this.t('sight.heightOfEye'), needed: true },
      { state: state.bearing, label: this.t('sight.bearing', { body: this.#bodyInWords }), needed: true },
      { state: state.heading, label: this.t('sight.heading'), needed: false },
      { state: state.variation, label: this.t('sight.variation'), needed: false },
      { state: state.cardDeviation, label: this.t('sight.cardDeviation'), needed: false },
    ];
    return missingView(this, this.#compass === 'gyro' ? labels.slice(0, -2) : labels);
  }

  /** Where the magnetic compass should show the body, as far as variation and card are known. */
  #expected(trueBearing: number): string {
    const state = this.#state;
    const latitude = valueOf(state.latitude);
    const longitude = valueOf(state.longitude);
    const instant = combinedInstant(state.date, state.time);
    if (this.#compass === 'gyro' || latitude === undefined || longitude === undefined || !instant) return '';
    const [variation, cardDeviation] = [valueOf(state.variation), this.#cardDeviation()];
    return expectedBearingText(this, { trueBearing, latitude, longitude, instant, variation, cardDeviation });
  }

  #planView(bearing: AmplitudeBearing): TemplateResult | typeof nothing {
    const seen = this.#seen(this.#state);
    if (!seen) return nothing;
    const plan = { seen, bearing, body: capital(this.#bodyInWords), expected: this.#expected(bearing.trueBearing) };
    return planView(this, { ...plan, take: (instant, said) => this.#takePlanned(instant, said) });
  }

  /** In place of an answer: how the sight is taken. */
  #howView(): TemplateResult {
    return html`<ol class="how">
      ${[1, 2, 3].map((step) => html`<li>${this.t(`amplitude.how.${step}`)}</li>`)}
    </ol>`;
  }

  protected override render(): TemplateResult {
    const bearing = this.#bearing;
    const result = this.#result;
    const body = this.#bodyInWords;
    const compassBearing = valueOf(this.#state.bearing) ?? 0;
    const shown = this.answer === 'shown';
    return this.frame(html`
      <h2 part="title">${this.t('amplitude.title')}</h2>
      <div class="columns">
        ${this.#fieldsView()}
        <div class="headline">
          ${result && shown ? answerView(this, result, valueOf(this.#state.heading)) : nothing}
          ${!result && bearing?.determined && shown ? this.#planView(bearing) : nothing}
          ${bearing && !bearing.determined ? html`<p class="waiting wrong">${this.t(`amplitude.none.${bearing.reason}`, { body: capital(body) })}</p>` : nothing}
          ${result || (bearing && !bearing.determined) ? nothing : this.#missing()}
          ${bearing ? nothing : this.#howView()}
        </div>
        <div class="explanation">
          ${result && shown
            ? explanationView(this, result, compassBearing, body, this.#state, () => this.offerRecord(amplitudeRecord(this.resultDetail())))
            : nothing}
        </div>
      </div>
    `);
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
