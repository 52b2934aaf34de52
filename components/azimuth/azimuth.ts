import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { azimuthBearing } from '../../core/sight/azimuth-bearing.js';
import type { AzimuthBearing, NoAzimuth } from '../../core/sight/azimuth-bearing.js';
import { azimuthSight } from '../../core/sight/azimuth-sight.js';
import type { AzimuthSight } from '../../core/sight/azimuth-sight.js';
import { bearingSeries } from '../../core/sight/bearing-series.js';
import type { BearingSeries, NoSeries } from '../../core/sight/bearing-series.js';
import { compassKinds } from '../../core/sight/compass-kind.js';
import { bodyNamed } from '../../core/sky/body.js';
import { formatDate, formatInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { valueOf } from '../shared/field.js';
import { headlineView } from '../shared/headline-view.js';
import { howView } from '../shared/how-view.js';
import { longTextStyles } from '../shared/long-text-styles.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { instantOfDay } from '../shared/place-and-time.js';
import { isUntimed } from '../shared/record-button.js';
import { SightElement } from '../shared/sight-element.js';
import { sightStyles } from '../shared/sight-styles.js';
import { isGrave } from '../shared/worthless.js';
import { seriesExplanation, sightExplanation } from './azimuth-explanation.js';
import { azimuthFields, observedAltitudeField } from './azimuth-fields.js';
import { azimuthMessages } from './azimuth-messages.js';
import { planView } from './azimuth-plan.js';
import { azimuthStyles } from './azimuth-styles.js';
import { bodiesView, followBody } from './bodies-view.js';
import { fieldsView } from './fields-view.js';
import { neededFields } from './needed-fields.js';
import { altitudeKinds, azimuthMethods, placingInputs, sourceOf } from './placing.js';
import type { AltitudeKind, AzimuthMethod, Placing } from './placing.js';
import { readSeries } from './series-text.js';
import type { LineProblem } from './series-text.js';
import { seriesTable } from './series-view.js';

export type { AzimuthMethod } from './placing.js';

/** For what is wrong with a line before there is a date. */
const ANY_DAY = { year: 2000, month: 1, day: 1 };

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
export class LubberAzimuth extends SightElement {
  static override styles: CSSResultGroup = [longTextStyles, sharedStyles, answerStyles, sightStyles, azimuthStyles];

  /** How the body is placed: `body`, `almanac` or `altitude`. */
  @property() method: AzimuthMethod = 'body';

  /** The body observed, by its almanac name. */
  @property() body = 'Sun';

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

  /** Bearing of the body by the compass, degrees. */
  @property() bearing?: string | number;

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
    compass: compassKinds,
  };

  #bearing: AzimuthBearing | NoAzimuth | null = null;
  #sight: AzimuthSight | null = null;
  #series: BearingSeries | NoSeries | null = null;
  #problems: readonly LineProblem[] = [];

  /** The last result as plain data, of the series where there is one; null where there is none. */
  get result(): AzimuthSight | BearingSeries | null {
    this.compute();
    return this.#found;
  }

  get #found(): AzimuthSight | BearingSeries | null {
    if (this.#series) return this.#series.determined ? this.#series : null;
    return this.#sight;
  }

  protected override get states() {
    return this.readAll(this.#altitudeOf === 'true' ? azimuthFields : { ...azimuthFields, altitude: observedAltitudeField });
  }

  get #altitudeOf(): AltitudeKind {
    return altitudeKinds.includes(this.altitudeOf) ? this.altitudeOf : 'true';
  }

  get #placing(): Placing {
    return {
      method: azimuthMethods.includes(this.method) ? this.method : 'body',
      body: bodyNamed(String(this.body ?? 'Sun')) ?? 'Sun',
      altitudeOf: this.#altitudeOf,
      side: this.side === 'west' ? 'west' : 'east',
      state: this.states,
    };
  }

  /** The series as typed; nothing where the host has taken it away. */
  get #seriesText(): string {
    return String(this.series ?? '').trim();
  }

  protected override compute(): void {
    [this.#bearing, this.#sight, this.#series, this.#problems] = [null, null, null, []];
    const { states, place, when } = this;
    const date = valueOf(states.date);
    // What is wrong with a line is so on any day.
    const read = this.#seriesText === '' ? null : readSeries(this.#seriesText, date ?? ANY_DAY);
    if (read) this.#problems = read.problems;
    const text = date ? read : null;
    if (!place || this.hasUnknownWord) return;
    const instant = when ?? text?.shots[0]?.instant ?? null;
    const source = sourceOf(this.#placing, instant);
    if (!source) return;
    const seriesCounts = text && text.shots.length > 0 && source.by !== 'altitude';
    if (seriesCounts && !this.splitRefused) {
      // A line without a head was taken on the one entered.
      const head = valueOf(states.heading);
      const shots = text.shots.map((shot) => ({ heading: head, ...shot, ...this.cardOn(shot.heading ?? head) }));
      this.#series = bearingSeries({ source, ...place, ...(when ? { instant: when } : {}), ...this.reading, shots });
      return;
    }
    const compassBearing = valueOf(states.bearing);
    if (compassBearing === undefined || this.splitRefused) {
      this.#bearing = azimuthBearing({ source, ...place, instant });
      return;
    }
    const sight = azimuthSight({ source, ...place, instant, day: instantOfDay(states.date, states.time), ...this.reading, ...this.cardHere, compassBearing });
    this.#bearing = sight;
    this.#sight = sight.determined ? sight : null;
  }

  /** What a series comes to, as one bearing would be told; null where there is none. */
  get #meanOfSeries() {
    if (!this.#series?.determined) return null;
    const { instant, compassBearing: bearing, heading } = this.#series;
    return { instant: formatInstant(instant), bearing, heading };
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#found;
    if (!result) return null;
    const { sightInputs } = this;
    const mean = this.#meanOfSeries;
    const instant = sightInputs.instant ?? mean?.instant ?? null;
    const bearing = mean ? null : (valueOf(this.states.bearing) ?? null);
    // A day without a time gives the variation all the same.
    const day = instantOfDay(this.states.date, this.states.time);
    return { inputs: { ...placingInputs(this.#placing), ...sightInputs, instant, day: day && formatDate(day), bearing, series: this.#seriesText || null }, result };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ ...detail.inputs, ...this.#meanOfSeries, method: 'azimuth', placedBy: detail.inputs.method, result: detail.result });
  }

  #missing(): TemplateResult {
    const placing = this.#placing;
    const series = this.#seriesText !== '';
    return html`${missingView(this, neededFields(this, placing, this.states, { gyro: this.gyro, series }))}
    ${placing.method === 'altitude' && series ? html`<p class="waiting">${this.t('azimuth.series.altitude')}</p>` : nothing}`;
  }

  #headline(): TemplateResult {
    const [bearing, found] = [this.#bearing, this.#found];
    const shown = this.answer === 'shown';
    const { doubtTilt } = this.states;
    if (found) return html`${shown ? headlineView(this, found, { heading: 'shots' in found ? found.heading : valueOf(this.states.heading), isGrave }) : nothing}`;
    if (bearing && !bearing.determined) return html`<p class="waiting wrong">${this.t(`azimuth.none.${bearing.reason}`)}</p>`;
    return html`${bearing && shown ? planView(this, bearing, valueOf(doubtTilt)) : nothing} ${this.#missing()} ${bearing ? nothing : howView(this, 'azimuth.how')}`;
  }

  #explanation(): TemplateResult {
    if (this.answer !== 'shown') return html``;
    const [series, sight] = [this.#series, this.#sight];
    const { states, place, when } = this;
    const { method, body } = this.#placing;
    const onRecord = (): void => this.#record();
    return html`${series ? seriesTable(this, series) : nothing}
      ${series?.determined ? seriesExplanation(this, series, states, onRecord) : nothing}
      ${!series && sight ? sightExplanation(this, sight, valueOf(states.bearing) ?? 0, states, isUntimed(states) ? null : onRecord) : nothing}
      ${method === 'altitude' || this.isLocked('body') ? nothing : bodiesView(this, { place, instant: when }, method === 'body' ? body : null)}`;
  }

  protected override update(changed: PropertyValues<this>): void {
    const follow = followBody(this.renderRoot as ShadowRoot);
    super.update(changed);
    follow();
  }

  protected override render(): TemplateResult {
    return this.frame(html`
      <h2 part="title">${this.t('azimuth.title')}</h2>
      <div class="columns">
        ${fieldsView(this, { states: this.states, placing: this.#placing, gyro: this.gyro, series: String(this.series ?? ''), problems: this.#problems })}
        <div class="headline">${this.#headline()}</div>
        <div class="explanation">${this.#explanation()}</div>
      </div>
    `);
  }
}
