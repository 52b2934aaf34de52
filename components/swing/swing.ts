import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Swing } from '../../core/swing/swing.js';
import { answerStyles } from '../shared/answer-styles.js';
import { deviationChartStyles } from '../shared/deviation-chart-styles.js';
import type { FieldInput } from '../shared/field.js';
import { readGivenCard } from '../shared/given-card.js';
import type { GivenCard } from '../shared/given-card.js';
import { lockedMark } from '../shared/locked-mark.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { tickStyles } from '../shared/tick-styles.js';
import { DraftKeeper } from './draft-keeper.js';
import { GridDesk } from './grid-desk.js';
import { pasteInto } from './grid-paste.js';
import { plannedRows, replanned } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { gridView } from './grid-view.js';
import { resultView } from './result-view.js';
import { settingsView } from './settings-view.js';
import { answerView } from './swing-answer.js';
import { readRowsData } from './swing-draft.js';
import type { SwingDraft } from './swing-draft.js';
import { chosenSettings, swingFields } from './swing-fields.js';
import { swingInputs } from './swing-inputs.js';
import { SwingProperties } from './swing-properties.js';
import { columnsFor, countNamed, swingState } from './swing-state.js';
import type { SwingState } from './swing-state.js';
import { swingStyles } from './swing-styles.js';
import { toolsView } from './tools-view.js';
import { SwingWork } from './worked-swing.js';

const settingNames: readonly string[] = [...Object.keys(swingFields), ...chosenSettings];

/**
 * A ship swung for deviation: a grid of headings and readings by any method, the curve through
 * them while they are typed, coefficients with what they are worth, doubtful readings, and
 * advice to an adjuster.
 *
 * @element lubber-swing
 * @fires lubber-result - when what the user did led to a fit: `inputs`, `result` with its `card`
 * @csspart frame - the whole widget
 * @csspart title - the heading
 * @csspart field - one setting with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - a table
 * @csspart picture - a drawing, to scale
 * @csspart grid - the table of readings
 * @csspart answer - the largest deviation in one line
 * @csspart curve - the chart
 * @csspart coefficients - the table of coefficients
 * @csspart cautions - what is odd about the swing
 * @csspart advice - advice on correctors
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberSwing extends SwingProperties {
  static override styles: CSSResultGroup = [tickStyles, sharedStyles, answerStyles, deviationChartStyles, swingStyles];

  @state() private mixed = false;
  @state() private edits = 0;

  readonly #desk = new GridDesk({ widget: this, columns: () => this.#columns, changed: () => this.change('edits', this.edits + 1) }, plannedRows(8));
  readonly #work = new SwingWork();
  readonly #draft = new DraftKeeper(this);

  /** The last swing as plain data; null while nothing is read. */
  get result(): Swing | null {
    return this.#work.of(this.#state).result;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const restored = !this.hasUpdated && this.rows === undefined && this.#restore();
    if (changed.has('rows') && this.rows !== undefined) {
      this.#show(this.#rowsGiven());
    } else if (changed.has('headings') && this.headings !== undefined && !this.isLocked('rows') && !restored) {
      const rows = replanned(this.#desk.rows, countNamed(this.headings));
      if (this.hasUpdated) this.#desk.replace(rows);
      else this.#desk.rows = rows;
    }
  }

  /** The rows as the page gives them, or as many empty ones as are planned. */
  #rowsGiven(): readonly GridRow[] {
    if (typeof this.rows !== 'string') return readRowsData(this.rows) ?? this.#planned();
    return this.rows.trim() === '' ? this.#planned() : pasteInto([], this.rows, { row: 0, column: 'heading', columns: this.#columns });
  }

  /** The form begins anew: so do the readings, and no draft is left of them. */
  override formResetCallback(): void {
    super.formResetCallback();
    this.#show(this.#rowsGiven());
    this.#draft.drop(this.draft);
  }

  #planned(): readonly GridRow[] {
    return plannedRows(countNamed(this.headings));
  }

  #show(rows: readonly GridRow[]): void {
    this.#desk.rows = rows.length > 0 ? rows : this.#planned();
    if (this.#desk.rows.some(({ by, method }) => by !== '' || method !== '')) this.mixed = true;
  }

  #restore(): boolean {
    const draft = this.draft === undefined ? null : this.#draft.restore(this.draft);
    if (!draft) return false;
    for (const [name, value] of Object.entries(draft.settings)) if (settingNames.includes(name)) (this as unknown as Record<string, FieldInput>)[name] = value;
    this.#show(draft.rows);
    this.say(this.t('swing.draft.restored'));
    return true;
  }

  get #given(): GivenCard {
    const own = readGivenCard(this.card);
    return own.card || own.problem ? own : { card: this.ship?.card ?? null, problem: null };
  }

  get #columns(): readonly TypedColumn[] {
    return columnsFor(this.#desk.rows, this.method);
  }

  get #state(): SwingState {
    return swingState(this, this.readAll(swingFields), { rows: this.#desk.rows, given: this.#given, unknown: this.hasUnknownWord });
  }

  /** The inputs of the swing as plain data; null while nothing is read. */
  protected override resultDetail() {
    const { rows, settings, result } = this.#work.of(this.#state);
    return result ? { inputs: swingInputs(rows, settings), result } : null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    // Kept before anybody hears of it, so that what was announced survives a crash.
    this.#draft.keep(this.draft, () => this.#asDraft());
    super.updated(changed);
  }

  #asDraft(): SwingDraft {
    return { rows: this.#desk.rows, settings: Object.fromEntries(settingNames.flatMap((name) => this.#textOf(name))) };
  }

  #textOf(name: string): [string, string][] {
    const value = (this as unknown as Record<string, FieldInput>)[name];
    return typeof value === 'string' || typeof value === 'number' ? [[name, String(value)]] : [];
  }

  override change(name: string, value: FieldInput): void {
    this.#draft.touch();
    super.change(name, value);
  }

  readonly #clear = (): void => {
    this.#desk.take(this.#planned(), null);
    this.#draft.drop(this.draft);
    this.say(this.t('swing.cleared'));
  };

  readonly #useCard = (): void => {
    const card = this.result?.card;
    if (!card || !this.ship) return;
    this.ship.useCard(card);
    this.say(this.t('swing.useCard.done'));
  };

  #toolsView(): TemplateResult {
    return toolsView(this, {
      desk: this.#desk,
      mixed: this.mixed,
      kept: this.draft === undefined ? null : this.#draft.kept,
      mix: (on) => (this.mixed = on),
      clear: this.#clear,
    });
  }

  protected override render(): TemplateResult {
    const now = this.#state;
    const worked = this.#work.of(now);
    const locked = this.isLocked('rows');
    const { narrow } = this.width;
    const headline = html`<div class="headline">${answerView(this, now, worked)}</div>`;
    return this.frame(html`
      <h2 part="title">${this.t('swing.title')}</h2>
      ${narrow ? headline : nothing}
      <div class="swing ${this.mixed ? 'wide' : this.#columns.length > 2 ? 'broad' : ''}">
        <div class="entry-side">
          ${settingsView(this, now)}
          <h3>${this.t('swing.grid.title')}${lockedMark(this, 'rows')}</h3>
          ${gridView(this, { state: now, worked, columns: this.#columns, mixed: this.mixed, typing: this.#desk.typing, locked }, this.#desk)}
          ${locked ? nothing : this.#toolsView()}
        </div>
        <div class="result-side">${narrow ? nothing : headline}${resultView(this, now, worked.result, this.#useCard)}</div>
      </div>
    `);
  }
}
