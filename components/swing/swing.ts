import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { AdjustedSwing, SwungCompass } from '../../core/swing/adjusted-swing.js';
import { answerStyles } from '../shared/answer-styles.js';
import { correctorsStyles } from '../shared/correctors-styles.js';
import { deviationChartStyles } from '../shared/deviation-chart-styles.js';
import type { FieldInput } from '../shared/field.js';
import type { GivenCard } from '../shared/given-card.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { signatureStyles } from '../shared/signature-styles.js';
import { tickStyles } from '../shared/tick-styles.js';
import { CardReader } from './card-reader.js';
import { DraftKeeper } from './draft-keeper.js';
import { entryView } from './entry-view.js';
import { GridDesk } from './grid-desk.js';
import { hasReadings } from './grid-row.js';
import type { TypedColumn } from './grid-row.js';
import { laidOut } from './laid-out.js';
import { resultView } from './result-view.js';
import { settingTexts, takeSettingTexts } from './setting-texts.js';
import { rowsNeed, sheetGiven } from './sheet-given.js';
import { answerView } from './swing-answer.js';
import { keptSheet, readDraft } from './swing-draft.js';
import { swingFields } from './swing-fields.js';
import { swingInputs } from './swing-inputs.js';
import { SwingProperties } from './swing-properties.js';
import { joined, parted, plannedSheet, replannedSheet, withPlannedRows } from './swing-sheet.js';
import type { StageName, SwingSheet } from './swing-sheet.js';
import { columnsFor, swingState } from './swing-state.js';
import type { SwingState } from './swing-state.js';
import { swingStyles } from './swing-styles.js';
import type { GridOption } from './tools-view.js';
import { countNamed } from './swing-words.js';
import { RoundsWork, roundThatHolds } from './worked-rounds.js';
import type { WorkedRounds } from './worked-rounds.js';

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
  static override styles: CSSResultGroup = [tickStyles, sharedStyles, answerStyles, deviationChartStyles, correctorsStyles, signatureStyles, swingStyles];

  @state() private mixed = false;
  /** The sheet as the user's last change left it, for the form. */
  @state() protected edits?: unknown;

  readonly #desk = new GridDesk(
    {
      widget: this,
      columns: () => this.#columns,
      deviations: () => (this.method ?? 'deviation') === 'deviation',
      shown: () => ({ stages: this.#two ? 'two' : 'one', stage: this.#stage }),
      show: (shown) => Object.assign(this, shown),
      changed: () => this.change('edits', keptSheet(this.#desk.sheet) as unknown as FieldInput),
    },
    plannedSheet(8),
  );
  readonly #work = new RoundsWork();
  readonly #cards = new CardReader();
  readonly #draft = new DraftKeeper(this);

  /** What is on the screen. */
  #shown: WorkedRounds | null = null;

  /** The last swing as plain data: what holds now, and what was found before; null while nothing is read. */
  get result(): AdjustedSwing | null {
    return this.#rounds.whole;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const restored = (changed.has('draft') && this.rows === undefined && this.#restore(!changed.get('draft'))) || this.#takeKept();
    const before = this.#desk.sheet;
    this.#takeOver((name) => changed.has(name));
    if (changed.has('headings') && this.headings !== undefined && this.#desk.sheet === before && !this.isLocked('rows') && !restored) {
      const sheet = replannedSheet(this.#desk.sheet, countNamed(this.headings));
      if (this.hasUpdated) this.#desk.replace(sheet);
      else this.#desk.sheet = sheet;
    }
  }

  /** What the page gives is laid on the desk, and the grid made as large as it needs. */
  #takeOver(wants: (name: keyof SwingProperties) => boolean): void {
    const sheet = sheetGiven(this.#desk.sheet, { page: this, planned: countNamed(this.headings), columns: this.#columns, wants, leaves: (caption) => this.#desk.leaveOut(caption) });
    if (sheet !== this.#desk.sheet) this.#show(sheet);
  }

  #show(sheet: SwingSheet): void {
    this.#desk.sheet = sheet;
    const need = rowsNeed(sheet);
    if (need.mixed) this.mixed = true;
    if (need.steering) this.compasses ??= 'two';
    if (need.found) this.stages ??= 'two';
  }

  /** The form begins anew: so do the readings, and no draft is left of them. */
  override formResetCallback(): void {
    super.formResetCallback();
    this.#desk.sheet = plannedSheet(countNamed(this.headings));
    this.#takeOver(() => true);
    this.#draft.drop(this.draft);
  }

  #restore(unnamed: boolean): boolean {
    // A page may name the draft late: readings that stand here already are the newer ones. Those of another name are kept under that.
    const { found, left } = this.#desk.sheet;
    const draft = !this.draft || (unnamed && hasReadings([...found.rows, ...left.rows])) ? null : this.#draft.restore(this.draft);
    if (!draft) return false;
    takeSettingTexts(this, draft.settings);
    this.#show(withPlannedRows(draft.sheet, countNamed(this.headings)));
    this.say(this.t('swing.draft.restored'));
    return true;
  }

  /** Takes up the readings as a browser gives them back to a form, as text; a draft is no older. */
  #takeKept(): boolean {
    const sheet = typeof this.edits === 'string' && !this.#draft.kept ? readDraft(this.edits)?.sheet : undefined;
    if (!sheet) return false;
    this.#show(withPlannedRows(sheet, countNamed(this.headings)));
    this.edits = keptSheet(this.#desk.sheet);
    return true;
  }

  /** Whether there are two rounds, as found and as left. */
  get #two(): boolean {
    return this.stages === 'two';
  }

  /** The round that is shown; a swing of one round is as left. */
  get #stage(): StageName {
    return this.#two && this.stage !== 'left' ? 'found' : 'left';
  }

  get #given(): GivenCard {
    const own = this.#cards.read(this.card);
    return own.card || own.problem ? own : { card: this.ship?.card ?? null, problem: null };
  }

  get #columns(): readonly TypedColumn[] {
    return columnsFor(this.#desk.rows, this.method, this.compasses === 'two');
  }

  #stateOf(stage: StageName): SwingState {
    const { rows, correctors } = this.#desk.sheet[stage];
    const given = this.#given;
    // Once something has been moved, the card in use until then says nothing of what is left.
    const adjusted = this.#two && stage === 'left' && hasReadings(this.#desk.sheet.found.rows) && given.card !== null;
    return swingState(this, this.readAll(swingFields), {
      rows,
      correctors,
      stage,
      two: this.#two,
      steering: this.compasses === 'two',
      given: adjusted ? { card: null, problem: null } : given,
      unknown: this.hasUnknownWord,
      words: this.t('entry.words'),
    });
  }

  get #rounds(): WorkedRounds {
    return this.#work.of((stage) => this.#stateOf(stage), this.#two);
  }

  /** The inputs of the swing as plain data, as they have just been shown; null while nothing is read. */
  protected override resultDetail() {
    const rounds = this.#shown ?? this.#rounds;
    const { found, whole } = rounds;
    if (!whole) return null;
    const { rows, settings } = roundThatHolds(rounds).worked;
    return { inputs: { ...swingInputs(rows, settings), ...(found ? { found: swingInputs(found.worked.rows, found.worked.settings) } : {}) }, result: whole };
  }

  protected override updated(changed: PropertyValues<this>): void {
    // Kept before anybody hears of it, so that what was announced survives a crash.
    this.#draft.keep(this.draft, () => ({ sheet: this.#desk.sheet, settings: settingTexts(this) }));
    super.updated(changed);
  }

  override change(name: string, value: FieldInput): void {
    this.#draft.touch();
    super.change(name, value);
  }

  readonly #clear = (): void => {
    this.#desk.takeSheet(plannedSheet(countNamed(this.headings)));
    this.#draft.drop(this.draft);
    this.say(this.t('swing.cleared'));
  };

  readonly #useCard = (compass: SwungCompass, as: SwungCompass): void => {
    const whole = this.result;
    const card = (compass === 'standard' ? whole : whole?.steering)?.card;
    if (!whole || !card || !this.ship) return;
    this.ship.useCard(card, { compass: as, correctors: whole.correctors[compass] });
    this.say(this.t('swing.useCard.done', { compass: this.t(`swing.compass.${as}`) }));
  };

  /** The grid grows or shrinks; nothing typed is lost. */
  #tick(option: GridOption, on: boolean): void {
    if (option === 'mixed') {
      this.mixed = on;
      return;
    }
    const { sheet } = this.#desk;
    const moved = option === 'compasses' ? sheet : on ? parted(sheet) : joined(sheet);
    if (moved !== sheet) this.#desk.takeSheet(moved);
    this.change(option, on ? 'two' : 'one');
  }

  protected override render(): TemplateResult {
    const { left, found, whole } = (this.#shown = this.#rounds);
    const round = this.#stage === 'found' && found ? found : left;
    const { state: now, worked } = round;
    const { narrow, close } = this.width;
    // With two more columns there is no room beside the readings.
    const wide = this.mixed || now.steering;
    // Where that is so, the answer comes first.
    const above = narrow || close || wide;
    const headline = html`<div class="headline">${answerView(this, now, worked)}</div>`;
    const entry = entryView(this, {
      round,
      other: round === left ? found : left,
      desk: this.#desk,
      columns: this.#columns,
      ticked: { mixed: this.mixed, stages: this.#two, compasses: this.compasses === 'two' },
      kept: this.draft ? this.#draft.kept : null,
      elsewhere: this.#draft.elsewhere,
      tick: (option, on) => this.#tick(option, on),
      clear: this.#clear,
    });
    const result = resultView(this, { state: now, result: worked.result, whole, useCard: this.#useCard });
    return this.frame(html`
      <h2 part="title">${this.t('swing.title')}</h2>
      ${above ? headline : nothing}
      <div class="swing ${wide ? 'wide' : this.#columns.length > 2 ? 'broad' : ''}">
        ${entry} ${narrow ? nothing : laidOut()}
        <div class="result-side">${above ? nothing : headline}${result}</div>
      </div>
    `);
  }
}
