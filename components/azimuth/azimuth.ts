import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { azimuthBearing } from '../../core/sight/azimuth-bearing.js';
import type { AzimuthBearing, NoAzimuth } from '../../core/sight/azimuth-bearing.js';
import { altitudeCautions } from '../../core/sight/azimuth-cautions.js';
import { azimuthSight } from '../../core/sight/azimuth-sight.js';
import type { AzimuthSight } from '../../core/sight/azimuth-sight.js';
import { bearingSeries } from '../../core/sight/bearing-series.js';
import type { BearingSeries, NoSeries } from '../../core/sight/bearing-series.js';
import { usualDoubts } from '../../core/sight/sight-doubts.js';
import { bodyNamed } from '../../core/sky/body.js';
import type { BodyName } from '../../core/sky/body.js';
import { formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { bodyName } from '../shared/body-name.js';
import { cardDeviationOn } from '../shared/card-deviation.js';
import { cautionsView } from '../shared/caution-view.js';
import { compassChoice, compassWords, headAndSplitView } from '../shared/compass-view.js';
import { supposedIn } from '../shared/doubt-fields.js';
import { valueOf } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { formatAngle, formatBearing } from '../shared/figures.js';
import { headlineView } from '../shared/headline-view.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { combinedInstant, placeView, splitInstant, whenView } from '../shared/place-and-time.js';
import { bearingField } from '../shared/trade-fields.js';
import { isWorthless } from '../shared/worthless.js';
import { azimuthFields, observedAltitudeField } from './azimuth-fields.js';
import { seriesExplanation, sightExplanation } from './azimuth-explanation.js';
import { azimuthMessages } from './azimuth-messages.js';
import { azimuthStyles } from './azimuth-styles.js';
import { bodiesView } from './bodies-view.js';
import { neededFields } from './needed-fields.js';
import { altitudeKinds, azimuthMethods, sourceOf } from './placing.js';
import type { AltitudeKind, AzimuthMethod, Placing } from './placing.js';
import { placingView } from './placing-view.js';
import { readSeries } from './series-text.js';
import type { LineProblem } from './series-text.js';
import { seriesField, seriesTable } from './series-view.js';

export type { AzimuthMethod } from './placing.js';

/**
 * Compass error from any body at any time: placed by the ephemeris, by figures of an
 * almanac, or by its altitude; one bearing or a series; and which body to take now.
 *
 * @element lubber-azimuth
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
 * @csspart bodies - the bodies fit for a bearing now
 * @csspart split - what the error is made of: variation, deviation, card
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberAzimuth extends LubberElement {
  static override styles: CSSResultGroup = [longTextStyles, sharedStyles, answerStyles, azimuthStyles];

  /** How the body is placed: `body`, `almanac` or `altitude`. */
  @property() method: AzimuthMethod = 'body';

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

  /** Greenwich hour angle from an almanac, degrees, westward. */
  @property() gha?: string | number;

  /** Sidereal hour angle of a star, degrees; with `aries` in place of `gha`. */
  @property() sha?: string | number;

  /** Greenwich hour angle of Aries, degrees. */
  @property() aries?: string | number;

  /** Declination from an almanac, degrees, north positive. */
  @property() declination?: string | number;

  /** Altitude for an azimuth by altitude, degrees. */
  @property() altitude?: string | number;

  /** What the altitude is: `true` of the centre, or observed over the visible horizon, `lower` limb, `centre` or `upper` limb. */
  @property({ attribute: 'altitude-of' }) altitudeOf: AltitudeKind = 'true';

  /** Height of the eye above the sea, metres, for an altitude observed. */
  @property({ attribute: 'height-of-eye' }) heightOfEye?: string | number;

  /** Side of the meridian, for an azimuth by altitude: `east` or `west`. */
  @property() side: 'east' | 'west' = 'east';

  /** `magnetic` or `gyro`. */
  @property() compass: 'magnetic' | 'gyro' = 'magnetic';

  /** Bearing of the body by the compass, degrees. */
  @property() bearing?: string | number;

  /** Ship's head by the same compass, degrees. */
  @property() heading?: string | number;

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** What the deviation card says for this heading, degrees, east positive; left empty, the ship's card is asked. */
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;

  /** Of a bearing read from the compass, one standard deviation, degrees; 0.5 is usual. */
  @property({ attribute: 'doubt-reading' }) doubtReading?: string | number;

  /** Of the position in each direction, one standard deviation, nautical miles; 1 is usual. */
  @property({ attribute: 'doubt-position' }) doubtPosition?: string | number;

  /** Of the time, one standard deviation, seconds; 5 is usual. */
  @property({ attribute: 'doubt-time' }) doubtTime?: string | number;

  /** Of the level of the azimuth circle, one standard deviation, degrees; 0.5 is usual. */
  @property({ attribute: 'doubt-tilt' }) doubtTilt?: string | number;

  /** A series of bearings as text: a line each with time, bearing and head. */
  @property() series = '';

  protected readonly messages = azimuthMessages;
  protected readonly fields = azimuthFields;
  protected override readonly words = {
    method: azimuthMethods,
    body: (word: string) => bodyNamed(word) !== null,
    altitudeOf: altitudeKinds,
    side: ['east', 'west'],
    compass: compassWords,
  };

  #bearing: AzimuthBearing | NoAzimuth | null = null;
  #sight: AzimuthSight | null = null;
  #series: BearingSeries | NoSeries | null = null;
  #problems: readonly LineProblem[] = [];

  /** The last result as plain data, of the series where there is one; null where there is none. */
  get result(): AzimuthSight | BearingSeries | null {
    this.#compute();
    return this.#found;
  }

  get #found(): AzimuthSight | BearingSeries | null {
    if (this.#series) return this.#series.determined ? this.#series : null;
    return this.#sight;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.#compute();
  }

  get #state() {
    return this.readAll(this.#altitudeOf === 'true' ? azimuthFields : { ...azimuthFields, altitude: observedAltitudeField });
  }

  get #method(): AzimuthMethod {
    return azimuthMethods.includes(this.method) ? this.method : 'body';
  }

  get #altitudeOf(): AltitudeKind {
    return altitudeKinds.includes(this.altitudeOf) ? this.altitudeOf : 'true';
  }

  #placing(state: Placing['state']): Placing {
    const side = this.side === 'west' ? 'west' : 'east';
    return { method: this.#method, body: this.#body, altitudeOf: this.#altitudeOf, side, state };
  }

  get #body(): BodyName {
    return bodyNamed(String(this.body ?? 'Sun')) ?? 'Sun';
  }

  /** The series as typed; nothing where the host has taken it away. */
  get #seriesText(): string {
    return String(this.series ?? '').trim();
  }

  get #gyro(): boolean {
    return this.compass === 'gyro';
  }

  /** The card's deviation: as typed, or by the ship's card for a heading. */
  #cardFor(heading: number | undefined): number | undefined {
    return valueOf(this.#state.cardDeviation) ?? (this.#gyro ? undefined : cardDeviationOn(this.ship, heading));
  }

  #compute(): void {
    [this.#bearing, this.#sight, this.#series, this.#problems] = [null, null, null, []];
    const state = this.#state;
    const [latitude, longitude] = [valueOf(state.latitude), valueOf(state.longitude)];
    const instant = combinedInstant(state.date, state.time);
    const date = valueOf(state.date);
    const variation = valueOf(state.variation);
    const refused = state.variation.state === 'refused' || state.cardDeviation.state === 'refused';
    const compass = this.#gyro ? ('gyro' as const) : ('magnetic' as const);
    const common = { compass, doubts: supposedIn(state), ...(variation === undefined ? {} : { variation }) };
    const text = this.#seriesText !== '' && date ? readSeries(this.series, date) : null;
    if (text) this.#problems = text.problems;
    if (latitude === undefined || longitude === undefined || this.hasUnknownWord) return;
    const firstShot = text?.shots[0]?.instant ?? null;
    const source = sourceOf(this.#placing(state), instant ?? firstShot);
    if (!source) return;
    const look = { source, latitude, longitude, instant: instant ?? firstShot };
    if (text && text.shots.length > 0 && source.by !== 'altitude' && !refused) {
      const shots = text.shots.map((shot) => {
        const card = this.#cardFor(shot.heading);
        return card === undefined ? shot : { ...shot, cardDeviation: card };
      });
      this.#series = bearingSeries({ source, latitude, longitude, ...(instant ? { instant } : {}), ...common, shots });
      return;
    }
    const compassBearing = valueOf(state.bearing);
    if (compassBearing === undefined || refused) {
      this.#bearing = azimuthBearing(look);
      return;
    }
    const cardDeviation = this.#cardFor(valueOf(state.heading));
    const sight = azimuthSight({ ...look, ...common, compassBearing, ...(cardDeviation === undefined ? {} : { cardDeviation }) });
    this.#bearing = sight;
    this.#sight = sight.determined ? sight : null;
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#found;
    if (!result) return null;
    const state = this.#state;
    const instant = combinedInstant(state.date, state.time);
    const almanac = this.#method === 'almanac';
    const byAltitude = this.#method === 'altitude';
    return {
      inputs: {
        method: this.#method,
        body: almanac ? null : this.#body,
        latitude: valueOf(state.latitude),
        longitude: valueOf(state.longitude),
        instant: instant ? formatInstant(instant) : null,
        gha: almanac ? (valueOf(state.gha) ?? null) : null,
        sha: almanac ? (valueOf(state.sha) ?? null) : null,
        aries: almanac ? (valueOf(state.aries) ?? null) : null,
        declination: valueOf(state.declination) ?? null,
        altitude: byAltitude ? (valueOf(state.altitude) ?? null) : null,
        altitudeOf: byAltitude ? this.#altitudeOf : null,
        heightOfEye: byAltitude && this.#altitudeOf !== 'true' ? (valueOf(state.heightOfEye) ?? null) : null,
        side: byAltitude ? this.side : null,
        compass: this.#gyro ? 'gyro' : 'magnetic',
        bearing: valueOf(state.bearing) ?? null,
        heading: valueOf(state.heading) ?? null,
        variation: valueOf(state.variation) ?? null,
        cardDeviation: valueOf(state.cardDeviation) ?? null,
        doubts: supposedIn(state),
        series: this.#seriesText || null,
      },
      result,
    };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ ...detail.inputs, method: 'azimuth', placedBy: detail.inputs.method, result: detail.result });
  }

  #take(body: BodyName): void {
    this.change('body', body);
    this.change('method', 'body');
    this.say(this.t('azimuth.now.taken', { body: bodyName(this, body) }));
  }

  #fieldsView(): TemplateResult {
    const state = this.#state;
    const gyro = this.#gyro;
    return html`<div class="fields">
      ${placingView(this, this.#placing(state))} ${placeView(this, state, azimuthFields)} ${whenView(this, state, azimuthFields)}
      ${compassChoice(this, gyro)}
      ${fieldView(this, 'bearing', bearingField(gyro ? 'G' : 'C'), state.bearing, { label: this.t(gyro ? 'azimuth.bearing.gyro' : 'azimuth.bearing') })}
      ${headAndSplitView(this, gyro, state)}
      <details ?open=${this.#seriesText !== ''}>
        <summary part="summary">${this.t('azimuth.series')}</summary>
        ${seriesField(this, this.series ?? '', this.#problems)}
      </details>
    </div>`;
  }

  #missing(): TemplateResult {
    const state = this.#state;
    const series = this.#seriesText !== '';
    const names = neededFields(this, this.#placing(state), state, { gyro: this.#gyro, series });
    return html`${missingView(this, names)}
    ${this.#method === 'altitude' && series ? html`<p class="waiting">${this.t('azimuth.series.altitude')}</p>` : nothing}`;
  }

  #headline(): TemplateResult {
    const bearing = this.#bearing;
    const found = this.#found;
    if (found) return this.answer === 'shown' ? headlineView(this, found, { heading: valueOf(this.#state.heading), worthless: isWorthless(found.cautions) }) : html``;
    if (bearing && !bearing.determined) return html`<p class="waiting wrong">${this.t(`azimuth.none.${bearing.reason}`)}</p>`;
    const plan =
      bearing && this.answer === 'shown'
        ? html`<p class="answer" part="answer"><bdi dir="ltr">${formatBearing(bearing.trueBearing)}</bdi> <small>${this.t('sight.mark.true')}</small></p>
            <p class="soft">${this.t('azimuth.plan', { altitude: formatAngle(bearing.altitude, 1) })}</p>
            ${cautionsView(this, altitudeCautions({ ...bearing, tilt: valueOf(this.#state.doubtTilt) ?? usualDoubts.tilt }))}`
        : nothing;
    const how = html`<ol class="how">
      ${[1, 2, 3].map((step) => html`<li>${this.t(`azimuth.how.${step}`)}</li>`)}
    </ol>`;
    return html`${plan} ${this.#missing()} ${bearing ? nothing : how}`;
  }

  #explanation(): TemplateResult {
    const state = this.#state;
    const shown = this.answer === 'shown';
    const onRecord = (): void => this.#record();
    return html`${this.#series && shown ? seriesTable(this, this.#series) : nothing}
      ${this.#series?.determined && shown ? seriesExplanation(this, this.#series, state, onRecord) : nothing}
      ${!this.#series && this.#sight && shown ? sightExplanation(this, this.#sight, valueOf(state.bearing) ?? 0, state, onRecord) : nothing}
      ${!shown || this.#method === 'altitude' || this.isLocked('body')
        ? nothing
        : html`<details class="no-print" part="bodies">
            <summary part="summary">${this.t('azimuth.now')}</summary>
            ${bodiesView(
              this,
              { latitude: valueOf(state.latitude), longitude: valueOf(state.longitude), instant: combinedInstant(state.date, state.time) },
              this.#method === 'body' ? this.#body : null,
              (body) => this.#take(body),
            )}
          </details>`}`;
  }

  protected override render(): TemplateResult {
    return this.frame(html`
      <h2 part="title">${this.t('azimuth.title')}</h2>
      <div class="columns">
        ${this.#fieldsView()}
        <div class="headline">${this.#headline()}</div>
        <div class="explanation">${this.#explanation()}</div>
      </div>
    `);
  }
}
