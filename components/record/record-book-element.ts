import type { PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { readDeviationCard } from '../../core/deviation/read-deviation-card.js';
import type { AdviceSettings } from '../../core/record/advice-settings.js';
import { bookName } from '../../core/record/chain.js';
import type { EntryDraft, MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { prepareEntry } from '../../core/record/prepare-entry.js';
import type { DraftProblem } from '../../core/record/read-draft.js';
import { swingFromRecord } from '../../core/record/swing-from-record.js';
import { parseInstant } from '../../core/time/instant.js';
import type { RecordRequestDetail } from '../shared/events.js';
import type { Ship } from '../shared/ship-context.js';
import type { BookFormat } from './book-file.js';
import type { ImportOutcome } from './book-import.js';
import { BookJudge } from './book-judge.js';
import type { Judged } from './book-judge.js';
import { formWords } from './form-view.js';
import { OpenBook } from './open-book.js';
import { importText, problemsText, saveText } from './outcome-text.js';
import type { Told, ToldAt } from './outcome-text.js';
import type { RecordBook, SaveOutcome } from './record-book.js';
import { RecordFormElement } from './record-form-element.js';
import { draftOfRequest } from './request-draft.js';

/** What became of a draft: kept, or why not. */
type EntryOutcome = SaveOutcome | { readonly saved: false; readonly reason: 'refused'; readonly problems: readonly DraftProblem[] };

/** The book behind the widget, as a page and the ship around it reach it. */
export abstract class RecordBookElement extends RecordFormElement {
  /** Name of the book; each name is a book of its own. Without it the ship's name and compass, or `book`. */
  @property() book?: string;

  /** The compass whose deviations are watched: `standard` or `steering`. */
  @property() compass: MagneticCompass = 'standard';

  /** The deviation card in use of the compass watched; without it the ship's. */
  @property({ attribute: false }) card?: DeviationCard | null;

  /** When to advise; what is left out is as usual. */
  @property({ attribute: false }) settings?: Partial<AdviceSettings>;

  /** Serial number of the compass, written with every entry. */
  @property({ attribute: 'compass-serial' }) compassSerial = '';

  /** Day of the card in use, written with every entry. */
  @property({ attribute: 'card-date' }) cardDate = '';

  /** The time that counts as now, ISO 8601 UTC or a `Date`; without it the clock of the device. */
  @property() now?: string | Date;

  /** Rows of the table on one page. */
  @property({ type: Number, attribute: 'page-size' }) pageSize = 25;

  protected override readonly words = { ...formWords, compass: ['standard', 'steering'] };

  /** What was last done, in words. */
  @state() protected told: Told = { text: '', wrong: false };

  /** How many newer entries precede those shown. */
  @state() protected first = 0;

  /** The entry shown in full; 0 for none. */
  @state() protected shown = 0;

  readonly #open = new OpenBook(() => this.requestUpdate());
  readonly #judge = new BookJudge();
  #turned: RecordBook | null = null;
  #heard: Ship | undefined;
  #stopHearing: () => void = () => undefined;

  protected get openBook(): RecordBook | null {
    return this.#open.book;
  }

  /** What is known of the book, as plain data; null until it is open. */
  get result(): { book: string; count: number; last: string | null; keeps: string; unexported: number; complete: boolean; broken: unknown; judgement: RecordJudgement | null } | null {
    const book = this.openBook;
    if (!book || book.state === 'opening') return null;
    const { name, count, last, keeps, unexported, complete, broken } = book;
    return { book: name, count, last: last?.hash ?? null, keeps, unexported, complete, broken, judgement: this.judged?.judgement ?? null };
  }

  /** The entries of the book, oldest first; all of them once `whole` has settled. */
  get entries(): readonly RecordEntry[] {
    return this.openBook?.entries ?? [];
  }

  /** The observations since the last event as readings of a swing: plain `heading`, `deviation` (east positive), `sigma`, `number`. */
  get swing(): ReturnType<typeof swingFromRecord> {
    return swingFromRecord(this.judged?.judgement.observed ?? []);
  }

  /** Settles when every entry has been read and the chain verified. */
  get whole(): Promise<void> {
    return this.#named().then((book) => book?.ready);
  }

  /**
   * Enters a draft for the host. Resolves once it is kept for good, or with the reason why not.
   * Nothing is guessed: a draft with a bad field is refused whole, with `problems`.
   */
  appendEntry(draft: EntryDraft): Promise<EntryOutcome> {
    return this.#append(draft);
  }

  async #append(draft: EntryDraft, at?: ToldAt): Promise<EntryOutcome> {
    const book = await this.#named();
    if (!book) return { saved: false, reason: 'closed', number: null };
    const reading = prepareEntry({ compassSerial: this.compassSerial, cardDate: this.cardDate, ...draft }, { watched: this.watched, card: this.cardInUse });
    if (!reading.ok) {
      this.told = { ...problemsText(this, reading.problems), at };
      return { saved: false, reason: 'refused', problems: reading.problems };
    }
    await book.opened;
    const before = book.last;
    const outcome = await book.append(reading.fields, this.#now());
    this.told = { ...saveText(this, outcome, before), at };
    if (outcome.saved) this.first = 0;
    return outcome;
  }

  /** Enters what a sight widget offers: the detail of its `lubber-record-request`. */
  appendRequest(detail: RecordRequestDetail): Promise<EntryOutcome> {
    const { compassSerial, cardDate } = this;
    return this.keepForUser(draftOfRequest(detail, { magnetic: this.watched, observer: this.observer ?? '', compassSerial, cardDate, now: this.#now() }));
  }

  /** Enters what the user wants to be kept: the browser is asked not to clear it. */
  protected async keepForUser(draft: EntryDraft, at?: ToldAt): Promise<EntryOutcome> {
    const shown = this.openBook;
    // In a book named that moment the number that is corrected is another entry's.
    if (draft.kind === 'correction' && (await this.#named()) !== shown) {
      const refused = { saved: false, reason: 'not-there', number: null } as const;
      this.told = { ...saveText(this, refused, null), at };
      return refused;
    }
    const outcome = await this.#append(draft, at);
    if (outcome.saved) this.openBook?.askToLast();
    return outcome;
  }

  /** The whole book as the text of a file. */
  async exportText(format: BookFormat): Promise<string> {
    return (await (await this.#named())?.exportText(format)) ?? '';
  }

  /** Takes over what the text of an exported file adds: all of it or nothing. */
  importText(text: string): Promise<ImportOutcome> {
    return this.takeOver(text);
  }

  protected async takeOver(text: string, at?: ToldAt): Promise<ImportOutcome> {
    const outcome: ImportOutcome = (await (await this.#named())?.importText(text)) ?? { ok: false, reason: 'closed', number: null };
    this.told = { ...importText(this, outcome), at };
    return outcome;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#hear(undefined);
    this.#open.close();
  }

  protected get watched(): MagneticCompass {
    return this.compass === 'steering' ? 'steering' : 'standard';
  }

  /** The card of the compass watched. It is data from outside: one that cannot be read is as none. */
  protected get cardInUse(): DeviationCard | null {
    const ofShip = this.watched === 'steering' ? this.ship?.steeringCard : this.ship?.card;
    const reading = readDeviationCard(this.card ?? ofShip ?? null);
    return reading.ok ? reading.card : null;
  }

  /** The book of the name as it stands, though it be not clear yet whether that is typed to its end: what is entered now is for no other. */
  async #named(): Promise<RecordBook | null> {
    await this.updateComplete;
    return this.#open.settle();
  }

  #now(): Date {
    const { now } = this;
    if (now instanceof Date && !Number.isNaN(now.getTime())) return now;
    const reading = parseInstant(String(now ?? ''));
    return reading.ok ? reading.value : new Date();
  }

  protected get bookCalled(): string {
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
    this.#open.called(this.bookCalled);
    this.#turn();
    if (this.ship !== this.#heard) this.#hear(this.ship);
  }

  /** In another book its numbers stand for other entries: neither the page turned to nor a correction begun is taken along. */
  #turn(): void {
    if (this.openBook === this.#turned) return;
    this.#turned = this.openBook;
    [this.first, this.shown] = [0, 0];
    if (this.corrected) this.cancelCorrection();
  }

  /** A sight's bubbling event passes by its sibling: the ship hands it on. */
  #hear(ship: Ship | undefined): void {
    this.#stopHearing();
    this.#heard = ship;
    this.#stopHearing = ship?.onRecordRequest((detail) => void this.appendRequest(detail), () => this.#show()) ?? (() => undefined);
  }

  /** Brings the user here from a sight, to the head of the book, below which it says what was entered. */
  #show(): void {
    this.renderRoot.querySelector<HTMLElement>('[part=title]')?.focus();
  }

  /** What follows from the entries; null until all are read. */
  protected get judged(): Judged | null {
    const book = this.openBook;
    return book?.complete ? this.#judge.judge(book.entries, { compass: this.watched, card: this.cardInUse, settings: this.settings, now: this.#now() }) : null;
  }
}
