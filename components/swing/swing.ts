import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { Swing } from '../../core/swing/swing.js';
import { answerStyles } from '../shared/answer-styles.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { deviationChartStyles } from '../shared/deviation-chart-styles.js';
import type { FieldInput, FieldState } from '../shared/field.js';
import { readGivenCard } from '../shared/given-card.js';
import type { GivenCard } from '../shared/given-card.js';
import { lockedMark } from '../shared/locked-mark.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { tickStyles } from '../shared/tick-styles.js';
import { adviceView } from './advice-view.js';
import { coefficientsView } from './coefficients-view.js';
import { curveView } from './curve-view.js';
import type { GridKey } from './grid-keys.js';
import { GridHistory } from './grid-history.js';
import { isTable, pasteInto, pastedCells } from './grid-paste.js';
import { hasReadings, plannedRows, replanned, withRow } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { gridView } from './grid-view.js';
import type { GridActions } from './grid-view.js';
import { judgeView, settingsView } from './settings-view.js';
import { answerView } from './swing-answer.js';
import { dropDraft, loadDraft, readRowsData, saveDraft } from './swing-draft.js';
import { chosenSettings, swingFields } from './swing-fields.js';
import type { SwingFieldName } from './swing-fields.js';
import { swingInputs } from './swing-inputs.js';
import { swingMessages } from './swing-messages.js';
import { countNamed, limitNamed, methodNamed, methodsOf, reckoningNamed, swingWords, usedFields } from './swing-state.js';
import type { SwingFieldStates, SwingState } from './swing-state.js';
import { swingStyles } from './swing-styles.js';
import { workOut } from './worked-swing.js';
import type { WorkedSwing } from './worked-swing.js';

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
export class LubberSwing extends LubberElement {
  static override styles: CSSResultGroup = [tickStyles, sharedStyles, answerStyles, deviationChartStyles, swingStyles];

  /** Rows as data, or as text: a line each, heading, reading and what the method asks besides, parted by tabs. */
  @property() rows?: readonly Partial<GridRow>[] | string;

  /** `deviation`, `known-object`, `unknown-object`, `sun`, `transit`, `shore-compass` or `gyro`. */
  @property() method?: string;

  /** By which north the headings are: `compass`, `magnetic` or `gyro`. */
  @property({ attribute: 'heading-by' }) headingBy?: string;

  /** Headings planned: 8, 16, 24 or 36. */
  @property() headings?: string | number;

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** Where she is swung: degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** Day of the swing, UTC. */
  @property() date?: string;

  /** Bearing of the distant object, degrees. */
  @property({ attribute: 'object-bearing' }) objectBearing?: string | number;

  /** By which north that bearing is: `magnetic` or `true`. */
  @property({ attribute: 'object-by' }) objectBy?: string;

  /** Radius of the swinging circle, metres. */
  @property({ attribute: 'circle-radius' }) circleRadius?: string | number;

  /** Distance of the object, nautical miles. */
  @property({ attribute: 'circle-distance' }) circleDistance?: string | number;

  /** Which way she turned: `starboard` or `port`. */
  @property() turning?: string;

  /** Charted true bearing of the transit, degrees. */
  @property({ attribute: 'transit-bearing' }) transitBearing?: string | number;

  /** Error of the gyro, degrees, east positive; left empty, not known. */
  @property({ attribute: 'gyro-error' }) gyroError?: string | number;

  /** Error of the shore compass, degrees, east positive; left empty, none. */
  @property({ attribute: 'shore-error' }) shoreError?: string | number;

  /** A known from elsewhere, degrees, for methods that lose it. */
  @property() constant?: string | number;

  /** `auto`, `approximate` or `exact`. */
  @property() model?: string;

  /** Code of the limit the card is held against. */
  @property() limit?: string;

  /** The card in use until now, as data; as attribute its JSON. */
  @property() card?: DeviationCard | string;

  /** Name under which the swing is kept on this device until cleared; without one nothing is kept. */
  @property() draft?: string;

  @state() private grid: readonly GridRow[] = plannedRows(8);
  @state() private typing: string | null = null;
  @state() private mixed = false;
  @state() private edits = 0;
  @state() private kept: boolean | null = null;

  protected readonly messages = swingMessages;
  protected readonly fields = swingFields;
  protected override readonly words = swingWords;

  readonly #history = new GridHistory();
  #worked: { readonly key: string; readonly grid: readonly GridRow[]; readonly card: DeviationCard | null; readonly worked: WorkedSwing } | null = null;

  /** The last swing as plain data; null while nothing is read. */
  get result(): Swing | null {
    return this.#work(this.#state).result;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (!this.hasUpdated && this.draft !== undefined && this.rows === undefined) this.#restore(this.draft);
    if (changed.has('rows') && this.rows !== undefined) {
      this.#show(this.#rowsGiven());
    } else if (changed.has('headings') && this.headings !== undefined && !this.isLocked('rows') && !this.#restored) {
      if (this.hasUpdated) this.#history.before(this.grid, null);
      this.grid = replanned(this.grid, countNamed(this.headings));
    }
    this.#restored = false;
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
    if (this.draft !== undefined) dropDraft(this.draft);
    this.#touched = false;
    this.kept = null;
  }

  #planned(): readonly GridRow[] {
    return plannedRows(countNamed(this.headings));
  }

  #show(rows: readonly GridRow[]): void {
    this.grid = rows.length > 0 ? rows : this.#planned();
    if (this.grid.some(({ by, method }) => by !== '' || method !== '')) this.mixed = true;
  }

  #restore(key: string): void {
    const draft = loadDraft(key);
    if (!draft) return;
    for (const [name, value] of Object.entries(draft.settings)) if (this.#settingNames.includes(name)) (this as unknown as Record<string, FieldInput>)[name] = value;
    this.#show(draft.rows);
    this.#restored = true;
    this.kept = true;
    this.say(this.t('swing.draft.restored'));
  }

  get #settingNames(): readonly string[] {
    return [...Object.keys(swingFields), ...chosenSettings];
  }

  get #given(): GivenCard {
    const own = readGivenCard(this.card);
    return own.card || own.problem ? own : { card: this.ship?.card ?? null, problem: null };
  }

  get #columns(): readonly TypedColumn[] {
    const methods = methodsOf(this.grid, methodNamed(this.method));
    return methods.includes('sun') || methods.includes('shore-compass') ? ['heading', 'reading', 'second'] : ['heading', 'reading'];
  }

  get #state(): SwingState {
    const names = Object.keys(swingFields) as SwingFieldName[];
    const fields = Object.fromEntries(names.map((name) => [name, this.read<unknown>(swingFields[name] as never, name) as FieldState<unknown>])) as unknown as SwingFieldStates;
    const method = methodNamed(this.method);
    const headingBy = reckoningNamed(this.headingBy);
    const objectBy = this.objectBy === 'true' ? 'true' : 'magnetic';
    const methods = methodsOf(this.grid, method);
    const byGyro = headingBy === 'gyro' || this.grid.some(({ by, heading }) => by === 'gyro' || /\d\s*g\s*$/i.test(heading));
    return {
      fields,
      method,
      headingBy,
      headings: countNamed(this.headings),
      objectBy,
      turning: this.turning === 'starboard' || this.turning === 'port' ? this.turning : 'unknown',
      model: this.model === 'approximate' || this.model === 'exact' ? this.model : 'auto',
      limit: limitNamed(this.limit),
      unknown: this.hasUnknownWord,
      given: this.#given,
      methods,
      used: usedFields({ methods, byGyro, gyroKnown: fields.gyroError.state !== 'empty', objectBy }),
      rows: this.grid,
    };
  }

  /** The swing is worked out once for the same rows and settings. */
  #work(now: SwingState): WorkedSwing {
    const { fields, rows, given, limit, ...rest } = now;
    const key = JSON.stringify([Object.values(fields).map(({ text }) => text), limit.code, rest.method, rest.headingBy, rest.headings, rest.objectBy, rest.turning, rest.model, rest.unknown]);
    const last = this.#worked;
    if (last?.key === key && last.grid === rows && last.card === given.card) return last.worked;
    const worked = workOut(now);
    this.#worked = { key, grid: rows, card: given.card, worked };
    return worked;
  }

  /** The inputs of the swing as plain data; null while nothing is read. */
  protected override resultDetail() {
    const { rows, settings, result } = this.#work(this.#state);
    return result ? { inputs: swingInputs(rows, settings), result } : null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    // Kept before anybody hears of it, so that what was announced survives a crash.
    if (this.draft !== undefined && this.#touched) {
      this.#touched = false;
      const settings = Object.fromEntries(this.#settingNames.flatMap((name) => this.#textOf(name)));
      const kept = saveDraft(this.draft, { rows: this.grid, settings });
      if (kept !== this.kept) this.kept = kept;
    }
    super.updated(changed);
  }

  #touched = false;
  #restored = false;

  #textOf(name: string): [string, string][] {
    const value = (this as unknown as Record<string, FieldInput>)[name];
    return typeof value === 'string' || typeof value === 'number' ? [[name, String(value)]] : [];
  }

  override change(name: string, value: FieldInput): void {
    this.#touched = true;
    super.change(name, value);
  }

  #take(rows: readonly GridRow[], cell: string | null): void {
    this.#history.before(this.grid, cell);
    this.grid = rows;
    this.change('edits', this.edits + 1);
  }

  #step(rows: readonly GridRow[] | null, said: string): void {
    if (!rows) return;
    this.grid = rows;
    this.typing = null;
    this.change('edits', this.edits + 1);
    this.say(this.t(said));
  }

  readonly #undo = (): void => this.#step(this.#history.undo(this.grid), 'swing.undone');
  readonly #redo = (): void => this.#step(this.#history.redo(this.grid), 'swing.redone');

  readonly #clear = (): void => {
    this.#take(this.#planned(), null);
    if (this.draft !== undefined) dropDraft(this.draft);
    this.#touched = false;
    this.kept = null;
    this.say(this.t('swing.cleared'));
  };

  readonly #useCard = (): void => {
    const card = this.result?.card;
    if (!card || !this.ship) return;
    this.ship.useCard(card);
    this.say(this.t('swing.useCard.done'));
  };

  async #goTo(place: number, column: TypedColumn): Promise<void> {
    if (place >= this.grid.length) this.grid = withRow(this.grid, place, {});
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>(`#${column}-${place}`)?.focus();
  }

  #press(key: NonNullable<GridKey>, place: number, column: TypedColumn): void {
    if (this.isLocked('rows')) {
      if (key.to !== 'cell') return;
    } else if (key.to === 'undo') return this.#undo();
    else if (key.to === 'redo') return this.#redo();
    if (key.to !== 'cell') return;
    const columns = this.#columns;
    const across = columns[columns.indexOf(column) + key.across];
    const last = this.grid[this.grid.length - 1];
    // A further row is made by going down from one that is in use.
    const most = this.grid.length - (this.isLocked('rows') || !last || !hasReadings([last]) ? 1 : 0);
    if (across) void this.#goTo(Math.max(0, Math.min(most, place + key.down)), across);
  }

  readonly #actions: GridActions = {
    edit: (place, change, cell) => {
      this.typing = cell;
      this.#take(withRow(this.grid, place, change), cell);
    },
    paste: (row, column, text) => {
      if (!isTable(text)) return false;
      this.typing = null;
      this.#take(pasteInto(this.grid, text, { row, column, columns: this.#columns }), null);
      this.say(this.t('swing.pasted', { count: pastedCells(text).length }));
      return true;
    },
    press: (key, place, column) => this.#press(key, place, column),
    leave: () => {
      this.#history.left();
      this.typing = null;
    },
  };

  #toolsView(): TemplateResult {
    const { draft } = this;
    return html`<div class="row tools no-print">
        <button part="button" type="button" id="undo" ?disabled=${!this.#history.canUndo} @click=${this.#undo}>${this.t('swing.undo')}</button>
        <button part="button" type="button" id="redo" ?disabled=${!this.#history.canRedo} @click=${this.#redo}>${this.t('swing.redo')}</button>
        <button part="button" type="button" id="add" @click=${() => void this.#goTo(this.grid.length, 'heading')}>${this.t('swing.addRow')}</button>
        <button part="button" type="button" id="clear" @click=${this.#clear}>${this.t('swing.clear')}</button>
      </div>
      <label class="mixed no-print"
        ><input part="input" type="checkbox" id="mixed" .checked=${this.mixed} @change=${(event: Event) => (this.mixed = (event.target as HTMLInputElement).checked)} />${this.t('swing.mixed')}</label
      >
      ${draft === undefined || this.kept === null ? nothing : html`<p class="hint no-print" id="draft">${this.t(this.kept ? 'swing.draft.kept' : 'swing.draft.refused')}</p>`}`;
  }

  #headlineView(now: SwingState, worked: WorkedSwing): TemplateResult {
    return html`<div class="headline">${answerView(this, now, worked)}</div>`;
  }

  #resultView(now: SwingState, worked: WorkedSwing): TemplateResult {
    const { result } = worked;
    const shown = result && this.answer === 'shown' && result.rows.some(({ ok }) => ok);
    return html`${this.width.narrow ? nothing : this.#headlineView(now, worked)}
      ${shown
        ? html`${curveView(this, result, now.given.card, now.limit.largest)} ${cautionsView(this, [...result.cautions, ...(result.check?.cautions ?? [])])}
            <p class="row no-print">
              ${wantsExact(result)
                ? html`<button part="button" type="button" id="exact" @click=${() => this.change('model', 'exact')}>${this.t('swing.exact.offer')}</button>`
                : nothing}
              ${result.card && this.ship ? html`<button part="button" type="button" id="use-card" @click=${this.#useCard}>${this.t('swing.useCard')}</button>` : nothing}
            </p>
            ${coefficientsView(this, result)}`
        : nothing}
      ${judgeView(this, now)} ${shown ? adviceView(this, result.advice) : nothing} ${standingCautions(this)}`;
  }

  protected override render(): TemplateResult {
    const now = this.#state;
    const worked = this.#work(now);
    const locked = this.isLocked('rows');
    return this.frame(html`
      <h2 part="title">${this.t('swing.title')}</h2>
      ${this.width.narrow ? this.#headlineView(now, worked) : nothing}
      <div class="swing ${this.mixed ? 'wide' : ''}">
        <div class="entry-side">
          ${settingsView(this, now)}
          <h3>${this.t('swing.grid.title')}${lockedMark(this, 'rows')}</h3>
          ${gridView(this, { state: now, worked, columns: this.#columns, mixed: this.mixed, typing: this.typing, locked }, this.#actions)}
          ${locked ? nothing : this.#toolsView()}
        </div>
        <div class="result-side">${this.#resultView(now, worked)}</div>
      </div>
    `);
  }
}

/** The five terms are in use where the exact coefficients would serve better. */
const wantsExact = ({ model, fit }: Swing): boolean =>
  model === 'approximate' && fit.warnings.some(({ code }) => code === 'exact-fit-better' || code === 'beyond-approximate');
