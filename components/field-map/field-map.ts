import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { magneticField } from '../../core/field/magnetic-field.js';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import { outsideModels } from '../../core/field/outside-models.js';
import { formatDate, instantOf } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { earthFieldStyles } from '../shared/earth-field-styles.js';
import { valueOf } from '../shared/field.js';
import type { FieldInput } from '../shared/field.js';
import { fieldNames } from '../shared/field-names.js';
import { formatLatitude, formatLongitude } from '../shared/figures.js';
import { instantParts } from '../shared/instant-parts.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { outsideModelsView } from '../shared/outside-models-view.js';
import { inOwnFigures } from '../shared/own-figures.js';
import { placeView } from '../shared/place-and-time.js';
import { inReadingOrder } from '../shared/reading-order.js';
import { sentences } from '../shared/sentences.js';
import { sliderStyles } from '../shared/slider-styles.js';
import { dateField, latitudeField, longitudeField } from '../shared/trade-fields.js';
import { fieldMapMessages } from './field-map-messages.js';
import { fieldMapStyles } from './field-map-styles.js';
import { crossAfter, startOf } from './map-cross.js';
import { mapControls } from './map-controls.js';
import { mapKey } from './map-key.js';
import { mapLinesNames } from './map-levels.js';
import type { MapLines } from './map-levels.js';
import { mapPicture } from './map-picture.js';
import { pointedPlace } from './map-pointer.js';
import { MapSheet } from './map-sheet.js';
import { mapSummary } from './map-summary.js';
import { mapTable } from './map-table.js';
import { mapViewNames } from './map-view-names.js';
import type { MapPlace, MapViewName } from './map-view-names.js';
import { MapWidth } from './map-width.js';
import { placeAnswer } from './place-answer.js';

const fields = { latitude: latitudeField, longitude: longitudeField, date: dateField };

/** The field at the place picked. */
export interface FieldMapResult extends MapPlace {
  readonly field: MagneticField;
}

/**
 * A map of the Earth's field at a date: lines of equal variation, dip or horizontal force,
 * the poles, the magnetic equator and the zones where a compass is of no use. A place is
 * picked by pointer or by keys, and its elements are told.
 *
 * @element lubber-field-map
 * @fires lubber-result - when the user picked a place or changed the date of one: `inputs`, `result`
 * @csspart frame - the whole widget
 * @csspart title - the heading
 * @csspart field - one field with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - the map in figures
 * @csspart map - the map
 * @csspart answer - the variation at the place picked
 * @csspart elements - the table of the elements at the place picked
 * @csspart cautions - what is odd about the answer
 * @csspart caution - one of the cautions
 */
export class LubberFieldMap extends LubberElement {
  static override styles: CSSResultGroup = [sliderStyles, sharedStyles, answerStyles, earthFieldStyles, fieldMapStyles];

  /** Place picked: degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Place picked: degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** Day, UTC; today unless given. */
  @property() date?: string;

  /** ISO 8601 UTC; its day is taken. */
  @property() instant?: string | Date;

  /** `variation`, `dip` or `horizontal`: the lines drawn. */
  @property() lines: MapLines = 'variation';

  /** `atlantic`, `pacific`, `north` or `south`: the part of the world. */
  @property() view: MapViewName = 'atlantic';

  @state() private cross: MapPlace | null = null;

  protected readonly messages = fieldMapMessages;
  protected readonly fields = fields;
  protected override readonly words = { lines: mapLinesNames, view: mapViewNames };

  readonly #width = new MapWidth(this, '.sheet');
  readonly #sheet = new MapSheet();
  readonly #today = formatDate(new Date());
  /** Of the date last understood. */
  #year = new Date().getUTCFullYear();
  #result: FieldMapResult | null = null;

  /** The place picked and its field as plain data; null where there is none. */
  get result(): FieldMapResult | null {
    this.#compute();
    return this.#result;
  }

  protected override input(name: string): FieldInput {
    return name === 'date' ? (super.input(name) ?? this.#today) : super.input(name);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (changed.has('instant')) this.#takeDay(changed.get('instant'));
    this.#compute();
  }

  /** The day of an instant set by the host; taken away, it takes the day along. */
  #takeDay(before: unknown): void {
    const day = instantParts(this.instant)?.date;
    if (day !== undefined || this.date === instantParts(before)?.date) Object.assign(this, { date: day });
  }

  protected override firstUpdated(): void {
    // The first drawings are slow until the engine has compiled them: one is made ahead, when the page has settled.
    setTimeout(() => {
      if (this.isConnected) this.#sheet.warm(this.#lines, this.#view, this.#width.value);
    }, 300);
  }

  get #state() {
    return this.readAll(fields);
  }

  get #lines(): MapLines {
    return mapLinesNames.includes(this.lines) ? this.lines : 'variation';
  }

  get #view(): MapViewName {
    return mapViewNames.includes(this.view) ? this.view : 'atlantic';
  }

  get #instant(): Date | null {
    const day = valueOf(this.#state.date);
    return day ? instantOf(day, 0) : null;
  }

  get #picked(): MapPlace | null {
    const { latitude, longitude } = this.#state;
    const [north, east] = [valueOf(latitude), valueOf(longitude)];
    return north === undefined || east === undefined ? null : { latitude: north, longitude: east };
  }

  #compute(): void {
    const [picked, instant] = [this.#picked, this.#instant];
    if (instant) this.#year = instant.getUTCFullYear();
    this.#result = picked && instant && !outsideModels(instant) && !this.hasUnknownWord ? { ...picked, field: magneticField(picked, instant) } : null;
  }

  /** The place and date of the result; null where something is still missing. */
  protected override resultDetail() {
    const [result, instant] = [this.#result, this.#instant];
    if (!result || !instant) return null;
    return { inputs: { latitude: result.latitude, longitude: result.longitude, date: formatDate(instant) }, result };
  }

  get #fixed(): boolean {
    return this.isLocked('latitude') || this.isLocked('longitude');
  }

  #pick(place: MapPlace): void {
    if (this.#fixed) return;
    this.change('latitude', latitudeField.write(place.latitude));
    this.change('longitude', longitudeField.write(place.longitude));
    inOwnFigures(this);
    this.say(this.t('field-map.picked', { latitude: formatLatitude(place.latitude), longitude: formatLongitude(place.longitude) }));
  }

  #onClick(event: MouseEvent): void {
    const place = pointedPlace(event, this.#sheet.ground(this.#view, this.#width.value).layout);
    if (!place) return;
    this.cross = null;
    this.#pick(place);
  }

  #onKey(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const from = this.cross ?? this.#picked ?? startOf(this.#view);
    const to = crossAfter(event.key, event.shiftKey, from, this.#view);
    if (to) {
      this.cross = to;
      this.say(this.#placeInWords(to));
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.cross = null;
      this.#pick(from);
    } else if (event.key === 'Escape' && this.cross) this.cross = null;
    else return;
    event.preventDefault();
  }

  /** Where the cross-hair is, and what the field is there. */
  #placeInWords(place: MapPlace): string {
    inOwnFigures(this);
    const words = this.t('field-map.cross', { latitude: formatLatitude(place.latitude, 0), longitude: formatLongitude(place.longitude, 0) });
    const instant = this.#instant;
    if (!instant || outsideModels(instant) || this.answer === 'hidden') return words;
    return `${words} ${placeAnswer.spoken(this, magneticField(place, instant))}`;
  }

  protected override render(): TemplateResult {
    const [lines, view, instant, result] = [this.#lines, this.#view, this.#instant, this.#result];
    const { layout, ground } = this.#sheet.ground(view, this.#width.value);
    const outside = instant ? outsideModels(instant) : null;
    const drawing = instant && !outside && !this.hasUnknownWord ? this.#sheet.drawing(lines, instant, layout, ground.figures) : null;
    const summary = drawing && instant ? mapSummary(this, lines, formatDate(instant), drawing) : '';
    return this.frame(html`
      <h2 part="title">${this.t('field-map.title')}</h2>
      ${mapControls(this, lines, view, { date: this.#state.date, year: this.#year })} ${outside ? outsideModelsView(this, outside, undefined) : nothing}
      <div
        class="sheet"
        part="map"
        tabindex="0"
        role="application"
        aria-label=${this.t('field-map.map')}
        aria-describedby="summary keys"
        @click=${this.#onClick}
        @keydown=${this.#onKey}
        @blur=${() => (this.cross = null)}
      >
        ${mapPicture({ layout, ground, drawing, lines, picked: this.#picked, cross: this.cross })}
      </div>
      ${drawing ? mapKey(this, lines, view) : nothing}
      <p class="small soft" id="summary">${sentences(this.t, summary, this.t('field-map.coast'))}</p>
      <p class="small soft no-print" id="keys">${this.t('field-map.keys')}</p>
      <div class="columns below">
        ${inReadingOrder(
          this,
          html`<div class="fields">${placeView(this, this.#state, fields)}</div>`,
          html`<div class="headline">
            ${missingView(this, fieldNames(this, this.#state, { latitude: false, longitude: false, date: false }))} ${result && this.answer === 'shown' ? placeAnswer.view(this, result) : nothing}
            ${result || outside ? nothing : html`<p class="waiting">${this.t('field-map.waiting')}</p>`}
          </div>`,
        )}
      </div>
      ${drawing && this.answer === 'shown' ? mapTable(this, lines, view, drawing.grid) : nothing}
    `);
  }
}
