import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { formatAngle, formatBearing, formatError } from '../../core/angle/format-angle.js';
import { transitSight } from '../../core/sight/transit-sight.js';
import type { NoTransit, Sighting, TransitSight } from '../../core/sight/transit-sight.js';
import { formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { cardDeviationOn } from '../shared/card-deviation.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { choiceView } from '../shared/choice-view.js';
import { doubtView } from '../shared/doubt-view.js';
import { valueOf } from '../shared/field.js';
import type { Field, FieldInput } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { headlineView } from '../shared/headline-view.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import type { FieldName } from '../shared/missing-view.js';
import { combinedInstant, placeView, splitInstant, whenView } from '../shared/place-and-time.js';
import { spokenError } from '../shared/spoken.js';
import { bearingField, dateField, errorField, latitudeField, longitudeField, timeField } from '../shared/trade-fields.js';
import { workingView } from '../shared/working-view.js';
import { givenMarks, lineOf, markKinds, noMark, partsOf } from './mark-texts.js';
import type { MarkKind, MarkPart, MarkTexts } from './mark-texts.js';
import { northsPicture } from './norths-picture.js';
import type { North } from './norths-picture.js';
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
};

const markFields: Readonly<Record<MarkPart, Field<number>>> = {
  bearing: bearingField('C'),
  charted: bearingField('T'),
  frontLatitude: latitudeField,
  frontLongitude: longitudeField,
  rearLatitude: latitudeField,
  rearLongitude: longitudeField,
};

/** `bearing-2`: a part of the third line. */
const MARK_NAME = /^(\w+)-(\d+)$/;

/**
 * Compass error from marks ashore: a line whose bearing the chart prints, two marks in line by
 * their positions, or one mark from the ship; one line or several.
 *
 * @element lubber-transit
 * @fires lubber-result - when what the user did led to an error: `inputs`, `result`
 * @fires lubber-record-request - when the user offers the result to a record book
 * @csspart frame - the whole widget
 * @csspart field - one field with its label
 * @csspart answer - the error in one line
 * @csspart working - the steps of the working
 * @csspart doubt - the causes of doubt
 * @csspart cautions - what is odd about the result
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

  /** True bearing of the first line as charted, degrees. */
  @property() charted?: string | number;

  /** Bearing of the first line by the compass, degrees. */
  @property() bearing?: string | number;

  /** Several lines: an array, or JSON, of `kind`, `bearing`, `charted`, `frontLatitude` and so on. */
  @property({ attribute: 'marks' }) marks: string | readonly Partial<MarkTexts>[] = '';

  protected readonly messages = transitMessages;
  protected readonly fields = fields;

  #marks: readonly MarkTexts[] = [noMark];
  #found: TransitSight | NoTransit | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): TransitSight | null {
    this.#compute();
    return this.#found?.determined ? this.#found : null;
  }

  /** A part of a line is no property of the element: it stands in the list of lines. */
  override change(name: string, value: FieldInput): void {
    const [, part, index] = MARK_NAME.exec(name) ?? [];
    if (part === undefined || index === undefined) {
      super.change(name, value);
      return;
    }
    const text = value === undefined || value === null ? '' : String(value);
    this.#marks = this.#marks.map((mark, at) => (at === Number(index) ? { ...mark, [part]: text } : mark));
    super.change('marks', undefined);
    this.requestUpdate();
  }

  protected override input(name: string): FieldInput {
    const [, part, index] = MARK_NAME.exec(name) ?? [];
    if (part === undefined) return super.input(name);
    return this.#marks[Number(index)]?.[part as keyof MarkTexts];
  }

  override isLocked(name: string): boolean {
    return super.isLocked(name) || super.isLocked(MARK_NAME.exec(name)?.[1] ?? name) || (MARK_NAME.test(name) && super.isLocked('marks'));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.#takeOver(changed);
    this.#compute();
  }

  /** What the host set of the lines goes into the list; what is wrong with it is said at once. */
  #takeOver(changed: PropertyValues<this>): void {
    if (changed.has('marks') && this.marks) {
      const given = givenMarks(this.marks);
      if (given.length > 0) this.#marks = given;
    }
    for (const part of ['charted', 'bearing'] as const) {
      const value = this[part];
      if (!changed.has(part) || value === undefined || value === null) continue;
      const text = typeof value === 'number' ? markFields[part].write(value) : value;
      this.#marks = this.#marks.map((mark, index) => (index === 0 ? { ...mark, [part]: text } : mark));
    }
    if (!this.hasUpdated) this.#marks.forEach((mark, index) => Object.keys(mark).forEach((part) => this.settle(`${part}-${index}`)));
  }

  override settle(name: string): void {
    // An empty part of a line has nothing that stands in for it.
    if (!MARK_NAME.test(name) || this.input(name) !== '') super.settle(name);
  }

  #partState(part: MarkPart, index: number) {
    return this.read(markFields[part], `${part}-${index}`);
  }

  get #state() {
    return {
      latitude: this.read(fields.latitude, 'latitude'),
      longitude: this.read(fields.longitude, 'longitude'),
      date: this.read(fields.date, 'date'),
      time: this.read(fields.time, 'time'),
      heading: this.read(fields.heading, 'heading'),
      variation: this.read(fields.variation, 'variation'),
      cardDeviation: this.read(fields.cardDeviation, 'cardDeviation'),
    };
  }

  get #gyro(): boolean {
    return this.compass === 'gyro';
  }

  #instant(): Date | null {
    const { date, time } = this.#state;
    return combinedInstant(date, time.state === 'empty' ? { state: 'value', text: '', value: 0 } : time);
  }

  #compute(): void {
    this.#found = null;
    const state = this.#state;
    const sightings: Sighting[] = [];
    for (const [index, mark] of this.#marks.entries()) {
      const value = (part: MarkPart): number | undefined => valueOf(this.#partState(part, index));
      const [line, compassBearing] = [lineOf(mark.kind, value), value('bearing')];
      if (!line || compassBearing === undefined) return;
      sightings.push({ line, compassBearing });
    }
    const [latitude, longitude] = [valueOf(state.latitude), valueOf(state.longitude)];
    const ship = latitude === undefined || longitude === undefined ? null : { latitude, longitude };
    if (!ship && this.#marks.some(({ kind }) => kind === 'one-mark')) return;
    if (state.variation.state === 'refused' || state.cardDeviation.state === 'refused') return;
    const variation = valueOf(state.variation);
    const cardDeviation = valueOf(state.cardDeviation) ?? (this.#gyro ? undefined : cardDeviationOn(this.ship?.card, valueOf(state.heading)));
    const instant = this.#instant();
    this.#found = transitSight({
      sightings,
      compass: this.#gyro ? 'gyro' : 'magnetic',
      ...(ship ? { ship } : {}),
      ...(instant ? { instant } : {}),
      ...(variation === undefined ? {} : { variation }),
      ...(cardDeviation === undefined ? {} : { cardDeviation }),
    });
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#found;
    if (!result?.determined) return null;
    const state = this.#state;
    const instant = this.#instant();
    return {
      inputs: {
        marks: this.#marks,
        latitude: valueOf(state.latitude) ?? null,
        longitude: valueOf(state.longitude) ?? null,
        instant: instant ? formatInstant(instant) : null,
        compass: this.#gyro ? 'gyro' : 'magnetic',
        heading: valueOf(state.heading) ?? null,
        variation: valueOf(state.variation) ?? null,
        cardDeviation: valueOf(state.cardDeviation) ?? null,
      },
      result,
    };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ method: 'transit', ...detail.inputs, result: detail.result });
  }

  #add(): void {
    this.#marks = [...this.#marks, { ...noMark, kind: this.#marks.at(-1)?.kind ?? 'charted' }];
    super.change('marks', undefined);
    this.requestUpdate();
  }

  #remove(index: number): void {
    this.#marks = this.#marks.filter((_, at) => at !== index);
    super.change('marks', undefined);
    this.say(this.t('transit.removed', { number: index + 1 }));
    this.requestUpdate();
  }

  #partLabel(part: MarkPart, kind: MarkKind): string {
    if (part === 'bearing') return this.t(this.#gyro ? 'transit.bearing.gyro' : 'transit.bearing');
    return this.t(kind === 'one-mark' ? `transit.one.${part}` : `transit.${part}`);
  }

  #markView(mark: MarkTexts, index: number): TemplateResult {
    const several = this.#marks.length > 1;
    return html`<div class="mark" role="group" aria-label=${this.t('transit.mark', { number: index + 1 })}>
      ${several ? html`<h3>${this.t('transit.mark', { number: index + 1 })}</h3>` : nothing}
      ${choiceView(
        this,
        `kind-${index}`,
        this.t('transit.kind'),
        mark.kind,
        markKinds.map((value) => ({ value, label: this.t(`transit.kind.${value}`) })),
      )}
      ${partsOf[mark.kind].map((part) => {
        const field = part === 'bearing' ? bearingField(this.#gyro ? 'G' : 'C') : markFields[part];
        return fieldView(this, `${part}-${index}`, field, this.#partState(part, index), { label: this.#partLabel(part, mark.kind) });
      })}
      ${several && !this.isLocked('marks')
        ? html`<p><button type="button" class="plain" @click=${() => this.#remove(index)}>${this.t('transit.remove', { number: index + 1 })}</button></p>`
        : nothing}
    </div>`;
  }

  #fieldsView(): TemplateResult {
    const state = this.#state;
    const gyro = this.#gyro;
    return html`<div class="fields">
      ${choiceView(
        this,
        'compass',
        this.t('sight.compass'),
        gyro ? 'gyro' : 'magnetic',
        (['magnetic', 'gyro'] as const).map((value) => ({ value, label: this.t(`sight.compass.${value}`) })),
      )}
      ${this.#marks.map((mark, index) => this.#markView(mark, index))}
      ${this.isLocked('marks') ? nothing : html`<p class="field"><button type="button" @click=${() => this.#add()}>${this.t('transit.add')}</button></p>`}
      ${fieldView(this, 'heading', bearingField(gyro ? 'G' : 'C'), state.heading, { label: this.t(gyro ? 'sight.heading.gyro' : 'sight.heading') })}
      ${gyro
        ? nothing
        : html`<div class="pair">
            ${fieldView(this, 'variation', fields.variation, state.variation, { label: this.t('sight.variation'), placeholder: this.t('sight.variation.model') })}
            ${fieldView(this, 'cardDeviation', fields.cardDeviation, state.cardDeviation, {
              label: this.t('sight.cardDeviation'),
              placeholder: this.t('sight.cardDeviation.none'),
            })}
          </div>`}
      <p class="legend">${this.t('transit.ship')}</p>
      ${placeView(this, state, fields)} ${whenView(this, state, fields)}
    </div>`;
  }

  #missing(): TemplateResult {
    const state = this.#state;
    const several = this.#marks.length > 1;
    const names: FieldName[] = this.#marks.flatMap((mark, index) =>
      partsOf[mark.kind].map((part) => {
        const label = this.#partLabel(part, mark.kind);
        return { state: this.#partState(part, index), label: several ? this.t('transit.named', { label, number: index + 1 }) : label, needed: true };
      }),
    );
    const place = this.#marks.some(({ kind }) => kind === 'one-mark');
    return missingView(this, [
      ...names,
      { state: state.latitude, label: this.t('sight.latitude'), needed: place },
      { state: state.longitude, label: this.t('sight.longitude'), needed: place },
      { state: state.date, label: this.t('sight.date'), needed: false },
      { state: state.time, label: this.t('sight.time'), needed: false },
      { state: state.heading, label: this.t('sight.heading'), needed: false },
      { state: state.variation, label: this.t('sight.variation'), needed: false },
      { state: state.cardDeviation, label: this.t('sight.cardDeviation'), needed: false },
    ]);
  }

  #headline(): TemplateResult {
    const found = this.#found;
    if (found?.determined) {
      // Of several lines no one true bearing is the answer's: the first stands for the picture of the split.
      const trueBearing = found.trueBearing ?? found.marks[0]?.trueBearing ?? 0;
      return this.answer === 'shown' ? headlineView(this, { ...found, trueBearing }) : html``;
    }
    if (found) return html`<p class="waiting wrong">${this.t(`transit.none.${found.reason}`, { number: found.index + 1 })}</p>`;
    return html`${this.#missing()}
      <ol class="how">
        ${[1, 2, 3].map((step) => html`<li>${this.t(`transit.how.${step}`)}</li>`)}
      </ol>`;
  }

  #picture(found: TransitSight): TemplateResult {
    const norths: North[] = [{ direction: 0, label: this.t('transit.north.true'), tone: 'ink' }];
    if (found.compass === 'magnetic' && found.variation.source !== 'none') {
      norths.push({ direction: found.variation.value, label: this.t('transit.north.magnetic'), tone: 'soft' });
    }
    norths.push({ direction: found.error, label: this.t(found.compass === 'gyro' ? 'transit.north.gyro' : 'transit.north.compass'), tone: 'accent' });
    const trueBearing = found.marks[0]?.trueBearing ?? 0;
    const summary = this.t('transit.picture', { true: formatBearing(trueBearing), error: `${this.t('sight.error')} ${spokenError(found.error, this.t)}` });
    return northsPicture(norths, found.trueBearing, formatBearing(trueBearing), summary);
  }

  #tableView(found: TransitSight): TemplateResult | typeof nothing {
    if (found.marks.length < 2) return nothing;
    const columns = ['true', 'rhumb', 'compass', 'error', 'residual'] as const;
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${this.t('transit.table')}>
        <table>
          <thead>
            <tr>
              <th scope="col"></th>
              ${columns.map((column) => html`<th scope="col" class="figure">${this.t(`transit.column.${column}`)}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${found.marks.map(
              (mark, index) => html`<tr>
                <th scope="row">${this.t('transit.mark', { number: index + 1 })}</th>
                <td class="figure">${formatBearing(mark.trueBearing)}</td>
                <td class="figure">${mark.rhumbBearing === null ? '–' : formatBearing(mark.rhumbBearing)}</td>
                <td class="figure">${formatBearing(mark.compassBearing)}</td>
                <td class="figure">${formatError(mark.error)}</td>
                <td class="figure">${formatError(mark.residual)}</td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${found.scatter === null ? nothing : html`<p class="small soft">${this.t('transit.scatter', { scatter: formatAngle(found.scatter, 2) })}</p>`}`;
  }

  #explanation(): TemplateResult | typeof nothing {
    const found = this.#found;
    if (!found?.determined || this.answer !== 'shown') return nothing;
    return html`${this.#picture(found)} ${this.#tableView(found)} ${cautionsView(this, found.cautions)}
      <div class="after">
        ${workingView(this, found.steps)} ${doubtView(this, found.doubt)}
        <p class="row after no-print"><button type="button" @click=${() => this.#record()}>${this.t('record')}</button></p>
      </div>
      ${standingCautions(this)}`;
  }

  protected override render(): TemplateResult {
    return this.frame(html`
      <h2>${this.t('transit.title')}</h2>
      <div class="columns">
        ${this.#fieldsView()}
        <div class="headline">${this.#headline()}</div>
        <div class="explanation">${this.#explanation()}</div>
      </div>
    `);
  }
}
