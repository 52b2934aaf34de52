import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { transitLine } from '../../core/sight/transit-line.js';
import type { TrueLine } from '../../core/sight/transit-line.js';
import { transitSight } from '../../core/sight/transit-sight.js';
import type { NoTransit, TransitSight } from '../../core/sight/transit-result.js';
import type { Sighting, TransitObservation } from '../../core/sight/transit-observation.js';
import { formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { cardDeviationOn } from '../shared/card-deviation.js';
import { compassChoice, compassWords, headAndSplitView } from '../shared/compass-view.js';
import { doubtFields, supposedIn } from '../shared/doubt-fields.js';
import { isUnset, textOf, valueOf } from '../shared/field.js';
import type { FieldInput, FieldState } from '../shared/field.js';
import { formatBearing } from '../shared/figures.js';
import { headlineView } from '../shared/headline-view.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import type { FieldName } from '../shared/missing-view.js';
import { combinedInstant, placeView, splitInstant, whenView } from '../shared/place-and-time.js';
import { bearingField, dateField, errorField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';
import { isWorthless } from '../shared/worthless.js';
import { lineView, partLabel } from './line-view.js';
import { markFields, markNameField, partName, partNamed } from './mark-fields.js';
import { givenMarks, lineOf, noMark, partsOf } from './mark-texts.js';
import type { MarkPart, MarkTexts } from './mark-texts.js';
import { explanationView } from './transit-explanation.js';
import { transitMessages } from './transit-messages.js';
import { transitStyles } from './transit-styles.js';

const fields = {
  latitude: latitudeField,
  longitude: longitudeField,
  date: dateField,
  time: timeField,
  heading: bearingField('C'),
  variation: errorField,
  cardDeviation: errorField,
  doubtReading: doubtFields.doubtReading,
  doubtCharted: doubtFields.doubtCharted,
  doubtMarks: doubtFields.doubtMarks,
  doubtShip: doubtFields.doubtShip,
};

/**
 * Compass error from marks ashore: a line whose bearing the chart prints, two marks in line by
 * their positions, or one mark from the ship; one line or several.
 *
 * @element lubber-transit
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
export class LubberTransit extends LubberElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, transitStyles];

  /** The ship's place: degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** The whole instant, ISO 8601 UTC; fills date and time. */
  @property() instant?: string | Date;

  /** Day, UTC. */
  @property() date?: string;

  /** Time of day, UTC. */
  @property() time?: string;

  /** `magnetic` or `gyro`. */
  @property() compass: 'magnetic' | 'gyro' = 'magnetic';

  /** Ship's head by the same compass, degrees. */
  @property() heading?: string | number;

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** What the deviation card says for this heading, degrees, east positive. */
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;

  /** Of a bearing read from the compass, one standard deviation, degrees; 0.5 is usual. */
  @property({ attribute: 'doubt-reading' }) doubtReading?: string | number;

  /** Of a charted bearing, one standard deviation, degrees; 0.15 is usual. */
  @property({ attribute: 'doubt-charted' }) doubtCharted?: string | number;

  /** Of the place of each mark in each direction, one standard deviation, metres; 10 is usual. */
  @property({ attribute: 'doubt-marks' }) doubtMarks?: string | number;

  /** Of the ship’s place in each direction, one standard deviation, metres; 20 is usual. */
  @property({ attribute: 'doubt-ship' }) doubtShip?: string | number;

  /** True bearing of the first line as charted, degrees. */
  @property() charted?: string | number;

  /** Bearing of the first line by the compass, degrees. */
  @property() bearing?: string | number;

  /**
   * Several lines: an array, or JSON, of `kind` (`charted`, `two-marks`, `one-mark`), `name`, `bearing`,
   * `charted`, `frontLatitude`, `frontLongitude`, `rearLatitude`, `rearLongitude`.
   */
  @property() marks?: string | readonly Partial<MarkTexts>[];

  protected readonly messages = transitMessages;
  protected readonly fields = fields;
  protected override readonly words = { compass: compassWords };

  /** The lines as they stand: taken over from the host, then the user's. */
  @state() private lines: readonly MarkTexts[] = [noMark];

  #used: readonly number[] = [];
  #plan: TrueLine | null = null;
  #found: TransitSight | NoTransit | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): TransitSight | null {
    this.#compute();
    return this.#found?.determined ? this.#found : null;
  }

  /** A part of a line is no property of the element: it stands in the list of lines. */
  override change(name: string, value: FieldInput): void {
    const named = partNamed(name);
    if (!named) {
      super.change(name, value);
      return;
    }
    const text = value === undefined || value === null ? '' : String(value);
    this.#setLines(this.lines.map((mark, index) => (index === named.index ? { ...mark, [named.part]: text } : mark)));
  }

  #setLines(lines: readonly MarkTexts[]): void {
    // A list is no field's value, but it is changed by the user as one is.
    super.change('lines', lines as unknown as FieldInput);
  }

  protected override input(name: string): FieldInput {
    const named = partNamed(name);
    return named ? this.lines[named.index]?.[named.part as keyof MarkTexts] : super.input(name);
  }

  override isLocked(name: string): boolean {
    const part = partNamed(name)?.part;
    return super.isLocked(name) || (part !== undefined && (super.isLocked(part) || super.isLocked('marks')));
  }

  override settle(name: string): void {
    // An empty part of a line has nothing that stands in for it.
    if (!partNamed(name) || this.input(name) !== '') super.settle(name);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.#takeOver(changed);
    this.#compute();
  }

  /** What the host set of the lines goes into the list; what is wrong with it is said at once. */
  #takeOver(changed: PropertyValues<this>): void {
    const before = this.lines;
    if (changed.has('marks') && this.marks) {
      const given = givenMarks(this.marks);
      if (given.length > 0) this.lines = given;
    }
    for (const part of ['charted', 'bearing'] as const) {
      if (!changed.has(part)) continue;
      const text = textOf(markFields[part], this[part]);
      // Taken away it goes, unless the user has typed something else.
      const before = textOf(markFields[part], changed.get(part) as FieldInput);
      if (isUnset(this[part]) && this.lines[0]?.[part] !== before) continue;
      this.lines = this.lines.map((mark, index) => (index === 0 ? { ...mark, [part]: text } : mark));
    }
    if (this.lines !== before) this.lines.forEach((mark, index) => Object.keys(mark).forEach((part) => this.settle(partName(part, index))));
  }

  #part(part: MarkPart, index: number): FieldState<number> {
    return this.read(markFields[part], partName(part, index));
  }

  #name(index: number): FieldState<string> {
    return this.read(markNameField, partName('name', index));
  }

  get #state() {
    return this.readAll(fields);
  }

  get #gyro(): boolean {
    return this.compass === 'gyro';
  }

  /** The variation changes little within a day: without a time its beginning does. */
  #instant(): Date | null {
    const { date, time } = this.#state;
    return combinedInstant(date, time.state === 'empty' ? { state: 'value', text: '', value: 0 } : time);
  }

  /** By the ship's card, where there is one and the heading is known. */
  #byCard(): number | undefined {
    return this.#gyro ? undefined : cardDeviationOn(this.ship, valueOf(this.#state.heading));
  }

  /** Everything but the lines. */
  #setting(): Omit<TransitObservation, 'sightings'> {
    const state = this.#state;
    const [latitude, longitude] = [valueOf(state.latitude), valueOf(state.longitude)];
    const instant = this.#instant();
    const variation = valueOf(state.variation);
    const cardDeviation = valueOf(state.cardDeviation) ?? this.#byCard();
    return {
      compass: this.#gyro ? 'gyro' : 'magnetic',
      doubts: supposedIn(state),
      ...(latitude === undefined || longitude === undefined ? {} : { ship: { latitude, longitude } }),
      ...(instant ? { instant } : {}),
      ...(variation === undefined ? {} : { variation }),
      ...(cardDeviation === undefined ? {} : { cardDeviation }),
    };
  }

  /** The error of the lines that are complete; without a bearing, where the first line lies. */
  #compute(): void {
    [this.#found, this.#plan] = [null, null];
    if (this.hasUnknownWord) return;
    const setting = this.#setting();
    const { ship } = setting;
    const sightings: Sighting[] = [];
    const used: number[] = [];
    for (const [index, { kind }] of this.lines.entries()) {
      const line = lineOf(kind, (part) => valueOf(this.#part(part, index)));
      const compassBearing = valueOf(this.#part('bearing', index));
      if (!line || (kind === 'one-mark' && !ship)) continue;
      if (compassBearing !== undefined) {
        sightings.push({ line, compassBearing });
        used.push(index);
      } else if (index === 0) {
        const planned = transitLine(line, ship);
        this.#plan = planned.determined ? planned.line : null;
      }
    }
    this.#used = used;
    const { variation, cardDeviation } = this.#state;
    const refused = !this.#gyro && [variation, cardDeviation].some((field) => field.state === 'refused');
    if (sightings.length > 0 && !refused) this.#found = transitSight({ ...setting, sightings });
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#found;
    if (!result?.determined) return null;
    const state = this.#state;
    const instant = this.#instant();
    const names = this.#used.map((index) => valueOf(this.#name(index)) ?? '');
    return {
      inputs: {
        marks: this.#used.map((index) => this.lines[index]),
        body: names.filter(Boolean).join('; ') || null,
        bearing: result.marks.length === 1 ? (result.marks[0]?.compassBearing ?? null) : null,
        latitude: valueOf(state.latitude) ?? null,
        longitude: valueOf(state.longitude) ?? null,
        instant: instant ? formatInstant(instant) : null,
        compass: this.#gyro ? 'gyro' : 'magnetic',
        heading: valueOf(state.heading) ?? null,
        variation: valueOf(state.variation) ?? null,
        cardDeviation: result.cardDeviation,
        doubts: supposedIn(state),
      },
      result,
    };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ method: 'transit', ...detail.inputs, result: detail.result });
  }

  #add(): void {
    this.#setLines([...this.lines, { ...noMark, kind: this.lines[this.lines.length - 1]?.kind ?? 'charted' }]);
    const index = this.lines.length - 1;
    const first = partsOf[this.lines[index]?.kind ?? 'charted'][0] ?? 'bearing';
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(`#${partName(first, index)}`)?.focus());
  }

  #remove(index: number): void {
    this.#setLines(this.lines.filter((_, at) => at !== index));
    this.say(this.t('transit.removed', { number: index + 1 }));
    // The button that was pressed is gone; the way on begins at the next one.
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#add-line')?.focus());
  }

  #fieldsView(): TemplateResult {
    const state = this.#state;
    const gyro = this.#gyro;
    return html`<div class="fields">
      ${compassChoice(this, gyro)}
      ${this.lines.map(({ kind }, index) =>
        lineView(this, {
          index,
          kind,
          several: this.lines.length > 1,
          gyro,
          state: (part) => this.#part(part, index),
          name: this.#name(index),
          remove: () => this.#remove(index),
        }),
      )}
      ${this.isLocked('marks') ? nothing : html`<p class="field no-print"><button part="button" type="button" id="add-line" @click=${() => this.#add()}>${this.t('transit.add')}</button></p>`}
      ${headAndSplitView(this, gyro, state)}
      <h3>${this.t('transit.ship')}</h3>
      <p class="hint why">${this.t('transit.ship.hint')}</p>
      ${placeView(this, state, fields)} ${whenView(this, state, fields)}
    </div>`;
  }

  #missing(): TemplateResult {
    const state = this.#state;
    const several = this.lines.length > 1;
    const ofLines: FieldName[] = this.lines.flatMap(({ kind }, index) =>
      partsOf[kind].map((part) => {
        const label = partLabel(this, part, kind, this.#gyro);
        return { state: this.#part(part, index), label: several ? this.t('transit.named', { label, number: index + 1 }) : label, needed: true };
      }),
    );
    const place = this.lines.some(({ kind }) => kind === 'one-mark');
    const ofShip = (['latitude', 'longitude', 'date', 'time', 'heading', 'variation', 'cardDeviation'] as const)
      .filter((name) => !this.#gyro || (name !== 'variation' && name !== 'cardDeviation'))
      .map((name) => ({ state: state[name], label: this.t(`sight.${name}`), needed: place && (name === 'latitude' || name === 'longitude') }));
    return missingView(this, [...ofLines, ...ofShip]);
  }

  #headline(): TemplateResult {
    const [found, plan] = [this.#found, this.#plan];
    const shown = this.answer === 'shown';
    // Lines begun and not finished do not count yet: what they need is said beside the answer.
    if (found?.determined) return html`${shown ? headlineView(this, found, { heading: valueOf(this.#state.heading), worthless: isWorthless(found.cautions) }) : nothing} ${this.#missing()}`;
    if (found) {
      const number = (this.#used[found.index] ?? 0) + 1;
      const line = this.lines.length > 1 ? this.t('transit.line.lead', { number }) : '';
      return html`<p class="waiting wrong">${this.t(`transit.none.${found.reason}`, { line })}</p>`;
    }
    if (plan && shown) {
      return html`<p class="answer" part="answer"><bdi dir="ltr">${formatBearing(plan.trueBearing)}</bdi> <small>${this.t('sight.mark.true')}</small></p>
        <p class="soft">${this.t(plan.markDistance !== null && !plan.ship ? 'transit.plan.front' : 'transit.plan')}</p>
        ${this.#missing()}`;
    }
    return html`${this.#missing()}
      <ol class="how">
        ${[1, 2, 3].map((step) => html`<li>${this.t(`transit.how.${step}`)}</li>`)}
      </ol>`;
  }

  protected override render(): TemplateResult {
    const found = this.#found;
    const numbers = this.#used.map((index) => index + 1);
    return this.frame(html`
      <h2 part="title">${this.t('transit.title')}</h2>
      <div class="columns">
        ${this.#fieldsView()}
        <div class="headline">${this.#headline()}</div>
        <div class="explanation">
          ${found?.determined && this.answer === 'shown' ? explanationView(this, found, numbers, this.#state, () => this.#record()) : nothing}
        </div>
      </div>
    `);
  }
}
