import { html, nothing } from 'lit';
import type { CSSResultGroup, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { compassKinds } from '../../core/sight/compass-kind.js';
import { roundedDoubt } from '../../core/sight/rounded-places.js';
import { usualTransitDoubts } from '../../core/sight/transit-doubts.js';
import { transitLine } from '../../core/sight/transit-line.js';
import type { TrueLine } from '../../core/sight/transit-line.js';
import type { Sighting } from '../../core/sight/transit-observation.js';
import type { NoTransit, TransitSight } from '../../core/sight/transit-result.js';
import { transitSight } from '../../core/sight/transit-sight.js';
import { answerStyles } from '../shared/answer-styles.js';
import { valueOf } from '../shared/field.js';
import { headlineView } from '../shared/headline-view.js';
import { howView } from '../shared/how-view.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { instantOfDay } from '../shared/place-and-time.js';
import { plannedBearing } from '../shared/planned-bearing.js';
import { isUntimed } from '../shared/record-button.js';
import { sightStyles } from '../shared/sight-styles.js';
import { isGrave } from '../shared/worthless.js';
import { cautionsOfLines } from './cautions-of-lines.js';
import { fieldsView } from './fields-view.js';
import type { LineShown } from './line-view.js';
import { LinesElement } from './lines-element.js';
import { lineOf, noMark, placesOf } from './mark-texts.js';
import { neededFields } from './needed-fields.js';
import { explanationView } from './transit-explanation.js';
import { transitFields } from './transit-fields.js';
import { transitMessages } from './transit-messages.js';
import { transitStyles } from './transit-styles.js';

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
export class LubberTransit extends LinesElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, sightStyles, transitStyles];

  /** Of a charted bearing, one standard deviation, degrees; 0.15 is usual. */
  @property({ attribute: 'doubt-charted' }) doubtCharted?: string | number;

  /** Of the place of each mark in each direction, one standard deviation, metres; 10 is usual, more where it is typed to a tenth of a minute or less. */
  @property({ attribute: 'doubt-marks' }) doubtMarks?: string | number;

  /** Of the ship’s place in each direction, one standard deviation, metres; 20 is usual, more where it is typed to a tenth of a minute or less. */
  @property({ attribute: 'doubt-ship' }) doubtShip?: string | number;

  protected readonly messages = transitMessages;
  protected readonly fields = transitFields;
  protected override readonly words = { compass: compassKinds };

  #used: readonly number[] = [];
  #plan: TrueLine | null = null;
  #found: TransitSight | NoTransit | null = null;

  /** The last result as plain data; null where there is none. */
  get result(): TransitSight | null {
    this.compute();
    return this.#found?.determined ? this.#found : null;
  }

  protected override get states() {
    return this.readAll(transitFields);
  }

  /** Only the variation hangs upon it. */
  protected override get when(): Date | null {
    return instantOfDay(this.states.date, this.states.time);
  }

  /** The error of the lines that are complete; without a bearing, where the first line lies. */
  protected override compute(): void {
    [this.#found, this.#plan] = [null, null];
    if (this.hasUnknownWord) return;
    const { place: ship, when } = this;
    const sightings: Sighting[] = [];
    const used: number[] = [];
    for (const [index, { kind }] of this.lines.entries()) {
      const line = lineOf(kind, (part) => valueOf(this.markPart(part, index)));
      const compassBearing = valueOf(this.markPart('bearing', index));
      if (!line || (kind === 'one-mark' && !ship)) continue;
      if (compassBearing !== undefined) {
        sightings.push({ line, compassBearing });
        used.push(index);
      } else if (index === 0) {
        const planned = transitLine(line, ship ?? undefined);
        this.#plan = planned.determined ? planned.line : null;
      }
    }
    this.#used = used;
    if (sightings.length === 0 || this.splitRefused) return;
    const { reading } = this;
    const { latitude, longitude } = this.states;
    // What places are worth as they were typed, unless the user supposes something else.
    const doubts = {
      marks: roundedDoubt(usualTransitDoubts.marks, used.flatMap((index) => placesOf(this.lines[index] ?? noMark))),
      ship: roundedDoubt(usualTransitDoubts.ship, [[latitude.text, longitude.text]]),
      ...reading.doubts,
    };
    this.#found = transitSight({ ...reading, doubts, ...this.cardHere, ...(ship ? { ship } : {}), ...(when ? { instant: when } : {}), sightings });
  }

  /** The inputs of the result as plain data; null where something is still missing. */
  protected override resultDetail() {
    const result = this.#found;
    if (!result?.determined) return null;
    const names = this.#used.map((index) => valueOf(this.nameOf(index)) ?? '');
    return {
      inputs: {
        ...this.sightInputs,
        marks: this.#used.map((index) => this.lines[index]),
        body: names.filter(Boolean).join('; ') || null,
        bearing: result.marks.length === 1 ? (result.marks[0]?.compassBearing ?? null) : null,
        cardDeviation: result.cardDeviation,
      },
      result,
    };
  }

  #record(): void {
    const detail = this.resultDetail();
    if (detail) this.offerRecord({ method: 'transit', ...detail.inputs, result: detail.result });
  }

  get #shown(): LineShown[] {
    return this.lines.map(({ kind }, index) => ({
      index,
      kind,
      several: this.lines.length > 1,
      gyro: this.gyro,
      state: (part) => this.markPart(part, index),
      name: this.nameOf(index),
      remove: () => this.removeLine(index),
    }));
  }

  /** What was found, its cautions as they are told. */
  #told(numbers: readonly number[]): TransitSight | NoTransit | null {
    const found = this.#found;
    return found?.determined ? { ...found, cautions: cautionsOfLines(this, found.cautions, numbers, this.lines.length) } : found;
  }

  #headline(found: TransitSight | NoTransit | null): TemplateResult {
    const plan = this.#plan;
    const shown = this.answer === 'shown';
    const missing = missingView(this, neededFields(this, this.#shown, this.states, this.gyro));
    // Lines begun and not finished do not count yet: what they need is said beside the answer.
    if (found?.determined) {
      return html`${shown ? headlineView(this, found, { heading: valueOf(this.states.heading), isGrave }) : nothing} ${missing}`;
    }
    if (found) {
      const number = (this.#used[found.index] ?? 0) + 1;
      const line = this.lines.length > 1 ? this.t('transit.line.lead', { number }) : '';
      return html`<p class="waiting wrong">${this.t(`transit.none.${found.reason}`, { line })}</p>`;
    }
    if (!plan || !shown) return html`${missing} ${howView(this, 'transit.how')}`;
    return html`${plannedBearing(this, plan.trueBearing)}
      <p class="soft">${this.t(plan.markDistance !== null && !plan.ship ? 'transit.plan.front' : 'transit.plan')}</p>
      ${missing}`;
  }

  protected override render(): TemplateResult {
    const { states, gyro } = this;
    const numbers = this.#used.map((index) => index + 1);
    const found = this.#told(numbers);
    return this.frame(html`
      <h2 part="title">${this.t('transit.title')}</h2>
      <div class="columns">
        ${fieldsView(this, { lines: this.#shown, states, gyro, add: () => this.addLine() })}
        <div class="headline">${this.#headline(found)}</div>
        <div class="explanation">
          ${found?.determined && this.answer === 'shown' ? explanationView(this, found, numbers, states, isUntimed(states) ? null : () => this.#record()) : nothing}
        </div>
      </div>
    `);
  }
}
