import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import { readDeviationCard } from '../../core/deviation/read-deviation-card.js';
import type { AdviceSettings } from '../../core/record/advice-settings.js';
import { bookName } from '../../core/record/chain.js';
import type { EntryDraft, MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import { judgeRecord } from '../../core/record/judge-record.js';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { prepareEntry } from '../../core/record/prepare-entry.js';
import { struckOut } from '../../core/record/standing-entries.js';
import { swingFromRecord } from '../../core/record/swing-from-record.js';
import { parseInstant } from '../../core/time/instant.js';
import { answerStyles } from '../shared/answer-styles.js';
import { standingCautions } from '../shared/caution-view.js';
import { LubberResultEvent } from '../shared/events.js';
import type { RecordRequestDetail } from '../shared/events.js';
import { fileStyles } from '../shared/file-styles.js';
import { listText } from '../shared/list-text.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { printAlone } from '../shared/print-alone.js';
import type { Ship } from '../shared/ship-context.js';
import { entryTable } from './entry-table.js';
import { fieldInWords } from './entry-text.js';
import { formView, formWords } from './form-view.js';
import { judgementView } from './judgement-view.js';
import { importText, problemsText, saveText } from './outcome-text.js';
import type { Told } from './outcome-text.js';
import { RecordBook } from './record-book.js';
import type { ImportOutcome, SaveOutcome } from './record-book.js';
import { draftOfForm, fieldsFor } from './record-form.js';
import { RecordFormElement } from './record-form-element.js';
import { recordStyles } from './record-styles.js';
import { draftOfRequest } from './request-draft.js';
import { fileName, saveFile } from './save-file.js';
import { statusView } from './status-view.js';
import { pager } from './table-pages.js';
import { transferView } from './transfer-view.js';

/** How long the name of a book must stand before another book is opened, milliseconds. */
const NAME_PATIENCE = 800;

/**
 * The record book of the compass: append only, chained, kept in the browser's database;
 * it holds every deviation against the card and says when the card no longer fits.
 *
 * @element lubber-record
 * @fires lubber-result - when the user entered something (`result.kind` is `entry`) or made a swing (`swing`, with `observations`)
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
 * @csspart status - how many entries are kept and exported
 * @csspart advice - what the book advises
 * @csspart transfer - export, import, print
 * @csspart standing - the line that says what the answer is for
 */
export class LubberRecord extends RecordFormElement {
  static override styles: CSSResultGroup = [fileStyles, sharedStyles, answerStyles, recordStyles];

  /** What is entered goes into the book, and into no form. */
  static override readonly formAssociated: boolean = false;

  /** Name of the book; each name is a book of its own. Without it the ship's name and compass, or `book`. */
  @property() book?: string;

  /** The compass whose deviations are watched: `standard` or `steering`. */
  @property() compass: MagneticCompass = 'standard';

  /** The deviation card in use; without it the ship's. */
  @property({ attribute: false }) card?: DeviationCard | null;

  /** When to advise; what is left out is as usual. */
  @property({ attribute: false }) settings?: Partial<AdviceSettings>;

  /** Serial number of the compass, written with every entry. */
  @property({ attribute: 'compass-serial' }) compassSerial = '';

  /** Day of the card in use, written with every entry. */
  @property({ attribute: 'card-date' }) cardDate = '';

  /** The time that counts as now, ISO 8601 UTC; without it the clock of the device. */
  @property() now?: string;

  /** Rows of the table on one page. */
  @property({ type: Number, attribute: 'page-size' }) pageSize = 25;

  protected override readonly words = { ...formWords, compass: ['standard', 'steering'] };

  @state() private shown = 0;
  @state() private first = 0;
  @state() private printing = false;
  @state() private told: Told = { text: '', wrong: false };

  #book: RecordBook | null = null;
  #heard: Ship | undefined;
  #stopHearing: () => void = () => undefined;
  #patience: ReturnType<typeof setTimeout> | undefined;
  #judged: { readonly of: readonly unknown[]; readonly judgement: RecordJudgement; readonly struck: ReadonlyMap<number, number> } | null = null;

  readonly #onPrint = (): void => {
    this.printing = true;
  };
  readonly #afterPrint = (): void => {
    this.printing = false;
  };

  /** What is known of the book, as plain data; null until it is open. */
  get result(): { book: string; count: number; last: string | null; keeps: string; unexported: number; complete: boolean; broken: unknown; judgement: RecordJudgement | null } | null {
    const book = this.#book;
    if (!book || book.state === 'opening') return null;
    const { name, count, last, keeps, unexported, complete, broken } = book;
    return { book: name, count, last: last?.hash ?? null, keeps, unexported, complete, broken, judgement: this.#judgement()?.judgement ?? null };
  }

  /** The entries of the book, oldest first; all of them once `whole` has settled. */
  get entries(): readonly RecordEntry[] {
    return this.#book?.entries ?? [];
  }

  /** The observations since the last event as readings of a swing: plain `heading`, `deviation` (east positive), `sigma`, `number`. */
  get swing(): ReturnType<typeof swingFromRecord> {
    return swingFromRecord(this.#judgement()?.judgement.observed ?? []);
  }

  /** Settles when every entry has been read and the chain verified. */
  get whole(): Promise<void> {
    return this.updateComplete.then(() => this.#book?.ready);
  }

  /**
   * Enters a draft for the host. Resolves once it is kept for good, or with the reason why not.
   * Nothing is guessed: a draft with a bad field is refused whole, with `problems`.
   */
  async appendEntry(draft: EntryDraft): Promise<SaveOutcome | { readonly saved: false; readonly reason: 'refused'; readonly problems: readonly { field: string; problem: string }[] }> {
    await this.updateComplete;
    const book = this.#book;
    if (!book) return { saved: false, reason: 'closed', number: null };
    const reading = prepareEntry({ compassSerial: this.compassSerial, cardDate: this.cardDate, ...draft }, { watched: this.#compass, card: this.#card });
    if (!reading.ok) {
      this.told = problemsText(this, reading.problems);
      return { saved: false, reason: 'refused', problems: reading.problems };
    }
    await book.opened;
    const before = book.last;
    const outcome = await book.append(reading.fields, this.#now());
    this.told = saveText(this, outcome, before);
    if (outcome.saved) this.first = 0;
    return outcome;
  }

  /** Enters what a sight widget offers: the detail of its `lubber-record-request`. */
  appendRequest(detail: RecordRequestDetail): ReturnType<LubberRecord['appendEntry']> {
    const { compassSerial, cardDate } = this;
    return this.appendEntry(draftOfRequest(detail, { magnetic: this.#compass, observer: this.observer ?? '', compassSerial, cardDate, now: this.#now() }));
  }

  /** The whole book as the text of a file. */
  async exportText(format: 'json' | 'csv'): Promise<string> {
    await this.updateComplete;
    return (await this.#book?.exportText(format)) ?? '';
  }

  /** Takes over what the text of an exported file adds: all of it or nothing. */
  async importText(text: string): Promise<ImportOutcome> {
    await this.updateComplete;
    const outcome: ImportOutcome = (await this.#book?.importText(text)) ?? { ok: false, reason: 'closed', number: null };
    this.told = importText(this, outcome);
    return outcome;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('beforeprint', this.#onPrint);
    addEventListener('afterprint', this.#afterPrint);
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('beforeprint', this.#onPrint);
    removeEventListener('afterprint', this.#afterPrint);
    this.#stopHearing();
    this.#heard = undefined;
    this.#book?.close();
    this.#book = null;
  }

  get #compass(): MagneticCompass {
    return this.compass === 'steering' ? 'steering' : 'standard';
  }

  /** A card is data from outside: one that cannot be read is as none. */
  get #card(): DeviationCard | null {
    const reading = readDeviationCard(this.card ?? this.ship?.card ?? null);
    return reading.ok ? reading.card : null;
  }

  get #curve(): DeviationCurve | null {
    const card = this.#card;
    return card ? deviationCurve(card) : null;
  }

  #now(): Date {
    const reading = parseInstant(this.now ?? '');
    return reading.ok ? reading.value : new Date();
  }

  get #bookName(): string {
    const ofShip = [this.ship?.name, this.ship?.compassName].filter(Boolean).join(', ');
    try {
      return bookName(this.book || ofShip || 'book');
    } catch {
      return 'book';
    }
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (!this.isConnected) return;
    if (!this.#book) this.#openBook();
    else if (this.#book.name !== this.#bookName) this.#changeBook();
    if (this.ship !== this.#heard) this.#hear(this.ship);
  }

  #openBook(): void {
    this.#book?.close();
    this.#judged = null;
    this.#book = new RecordBook(this.#bookName, () => this.requestUpdate());
  }

  /** While the name of the ship is being typed no book is opened for every letter of it. */
  #changeBook(): void {
    clearTimeout(this.#patience);
    this.#patience = setTimeout(() => {
      if (!this.isConnected || this.#book?.name === this.#bookName) return;
      this.#openBook();
      this.requestUpdate();
    }, NAME_PATIENCE);
  }

  /** A sight's bubbling event passes by its sibling: the ship hands it on. */
  #hear(ship: Ship | undefined): void {
    this.#stopHearing();
    this.#heard = ship;
    this.#stopHearing = ship?.onRecordRequest((detail) => void this.appendRequest(detail)) ?? (() => undefined);
  }

  protected override resultDetail(): null {
    // What is typed in the form is no result; a saved entry and a swing fire by themselves.
    return null;
  }

  /** All that follows from the entries, worked out once for each state of them. */
  #judgement() {
    const book = this.#book;
    if (!book?.complete) return null;
    const minute = Math.floor(this.#now().getTime() / 60_000);
    const of = [book.entries, this.#compass, JSON.stringify(this.#card), JSON.stringify(this.settings), minute];
    if (!this.#judged || this.#judged.of.some((part, place) => part !== of[place])) {
      const judgement = judgeRecord(book.entries, { compass: this.#compass, card: this.#card, now: this.#now(), settings: this.settings ?? {} });
      this.#judged = { of, judgement, struck: struckOut(book.entries) };
    }
    return this.#judged;
  }

  async #save(): Promise<void> {
    const state = this.formState;
    const choices = this.choices;
    const counted = fieldsFor(choices);
    for (const name of counted) this.settle(name);
    if (this.hasUnknownWord) {
      this.told = { text: this.t('answer.wrong', { fields: this.unknownWords.join(', ') }), wrong: true };
      return;
    }
    const wrong = counted.filter((name) => state[name].state === 'refused');
    if (wrong.length > 0) {
      const fields = listText(this.t, wrong.map((name) => this.t(`field.${name}`)));
      this.told = { text: this.t('answer.wrong', { fields }), wrong: true };
      return;
    }
    const draft = draftOfForm(state, choices, this.corrected?.instant ?? null);
    if (!draft) {
      this.told = { text: this.t('answer.missing', { fields: this.t('field.instant') }), wrong: true };
      return;
    }
    const by = this.#book ? struckOut(this.#book.entries).get(choices.corrects) : undefined;
    if (by !== undefined) {
      this.told = { text: this.t('record.unsaved.struck', { number: choices.corrects, by }), wrong: true };
      return;
    }
    const outcome = await this.appendEntry(draft);
    if (!outcome.saved) return;
    this.forgetObservation();
    this.corrected = null;
    this.dispatchEvent(new LubberResultEvent({ widget: this.localName, inputs: { ...draft }, result: { kind: 'entry', entry: outcome.entry } }));
  }

  /** What the form would put in the book, in words. */
  #preview(): string {
    const draft = draftOfForm(this.formState, this.choices, null);
    if (!draft || (draft.replacement ?? draft.kind) !== 'observation') return '';
    const reading = prepareEntry({ ...draft, kind: 'observation', corrects: null, replacement: null }, { watched: this.#compass, card: this.#card });
    if (!reading.ok) return '';
    const entry = reading.fields as RecordEntry;
    return (['errorGyro', 'errorStandard', 'errorSteering', 'deviation', 'cardDeviation', 'difference'] as const)
      .filter((name) => entry[name] !== null)
      .map((name) => `${this.t(`field.${name}`)} ${fieldInWords(this, entry, name)}`)
      .join(this.t('list.semicolon'));
  }

  async #export(format: 'json' | 'csv'): Promise<void> {
    const book = this.#book;
    if (!book) return;
    const text = await book.exportText(format);
    const { count } = book;
    const file = fileName(book.name, count, format);
    saveFile(file, text, format === 'json' ? 'application/json' : 'text/csv');
    await book.markExported(count);
    this.told = { text: this.t('record.exported', { count, file }), wrong: false };
  }

  async #import(file: File): Promise<void> {
    try {
      await this.importText(new TextDecoder().decode(await file.arrayBuffer()));
    } catch {
      this.told = { text: `${this.t('record.import.unreadable')} ${this.t('record.import.nothing-done')}`, wrong: true };
    }
  }

  async #print(): Promise<void> {
    await this.#book?.ready;
    this.printing = true;
    await this.updateComplete;
    printAlone(this);
    this.printing = false;
  }

  #makeSwing(): void {
    const observations = this.swing;
    this.told = { text: this.t('record.swing.done', { count: observations.length }), wrong: false };
    this.dispatchEvent(
      new LubberResultEvent({ widget: this.localName, inputs: { book: this.#bookName, compass: this.#compass }, result: { kind: 'swing', observations } }),
    );
  }

  #tableView(book: RecordBook): TemplateResult {
    const { entries, count } = book;
    const size = Math.max(1, Math.floor(this.pageSize) || 25);
    const first = Math.min(this.first, Math.max(0, count - 1));
    const from = this.printing ? 0 : Math.max(0, entries.length - first - size);
    const rows = entries.slice(from, this.printing ? entries.length : entries.length - first).map((entry, place) => ({ entry, before: entries[from + place - 1] ?? null }));
    const table = entryTable(this, this.printing ? rows : rows.reverse(), {
      compass: this.#compass,
      struck: this.#judgement()?.struck ?? new Map<number, number>(),
      shown: this.shown,
      narrow: this.width.narrow && !this.printing,
      live: !this.printing,
      show: (number) => (this.shown = number),
      correct: (entry) => this.correct(entry),
    });
    return html`${table} ${this.printing ? nothing : pager(this, { first, size, count, go: (place) => (this.first = place) })}`;
  }

  protected override render(): TemplateResult {
    const book = this.#book;
    if (!book) return this.frame(html`<h2 part="title">${this.t('record.title')}</h2>`);
    const open = book.state !== 'opening' && book.state !== 'blocked';
    const judged = this.#judgement();
    const correcting = this.corrected ? this.t('record.correcting', { number: this.corrected.number }) : this.t('record.new');
    return this.frame(html`
      <h2 part="title">${this.t('record.title')}</h2>
      <p class="soft small">${this.t('record.book', { book: book.name })}</p>
      ${missingView(this, [])} ${statusView(this, book)}
      <p class="told no-print ${this.told.wrong ? 'wrong' : ''}" role="status">${this.told.text}</p>
      ${open
        ? html`<details class="form no-print" ?open=${this.corrected !== null}>
              <summary part="summary">${correcting}</summary>
              ${formView(this, this.formState, this.choices, {
                hasCard: this.#card !== null,
                preview: this.#preview(),
                onSave: () => void this.#save(),
                onCancel: () => this.cancelCorrection(),
              })}
            </details>
            ${judged ? judgementView(this, judged.judgement, this.#curve, () => this.#makeSwing()) : nothing}
            <h3>${this.t(this.printing ? 'record.table.printed' : 'record.table')}</h3>
            ${this.#tableView(book)}
            ${transferView(this, {
              export: (format) => void this.#export(format),
              import: (file) => void this.#import(file),
              print: () => void this.#print(),
            })}
            <p class="small soft">
              ${this.t('record.honest')} ${book.last ? this.t('record.last', { number: book.last.number, hash: book.last.hash }) : nothing}
            </p>`
        : nothing}
      ${standingCautions(this)}
    `);
  }
}
