import { html, nothing } from 'lit';
import type { CSSResultGroup, TemplateResult } from 'lit';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { EntryDraft } from '../../core/record/entry.js';
import { struckOut } from '../../core/record/standing-entries.js';
import { answerStyles } from '../shared/answer-styles.js';
import { standingCautions } from '../shared/caution-view.js';
import { LubberResultEvent } from '../shared/events.js';
import { errorColumnStyles } from '../shared/error-column-styles.js';
import { fileStyles } from '../shared/file-styles.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { mainButtonStyles } from '../shared/main-button-styles.js';
import { missingView } from '../shared/missing-view.js';
import { sentences } from '../shared/sentences.js';
import { signatureLines } from '../shared/signature-lines.js';
import { signatureStyles } from '../shared/signature-styles.js';
import { exportBook, textOfFile } from './book-file.js';
import type { BookFormat } from './book-file.js';
import type { Judged } from './book-judge.js';
import { formProblem } from './form-problem.js';
import { formView } from './form-view.js';
import { judgementView } from './judgement-view.js';
import type { ToldAt } from './outcome-text.js';
import { PaperMode } from './paper-mode.js';
import { previewText } from './preview-text.js';
import type { RecordBook } from './record-book.js';
import { RecordBookElement } from './record-book-element.js';
import { draftOfForm, fieldsFor } from './record-form.js';
import { recordStyles } from './record-styles.js';
import { statusView } from './status-view.js';
import { pagedTable } from './table-pages.js';
import { transferView } from './transfer-view.js';

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
export class LubberRecord extends RecordBookElement {
  static override styles: CSSResultGroup = [fileStyles, sharedStyles, mainButtonStyles, answerStyles, errorColumnStyles, signatureStyles, recordStyles];

  /** What is entered goes into the book, and into no form. */
  static override readonly formAssociated: boolean = false;

  readonly #paper = new PaperMode(this);
  #saving = false;

  protected override resultDetail(): null {
    // What is typed in the form is no result; a saved entry and a swing fire by themselves.
    return null;
  }

  /** What the form says as it stands. */
  get #draft(): EntryDraft | null {
    return draftOfForm(this.formState, this.choices, this.corrected?.instant ?? null);
  }

  /** A correction that is struck out with nothing in its place strikes nothing any more: what counts again then, in words. */
  get #revives(): string {
    const { corrected, choices } = this;
    const number = corrected?.corrects;
    const stands = number && !choices.replaces && struckOut(this.entries).get(number) === choices.corrects;
    return stands ? this.t('record.revives', { number }) : '';
  }

  async #save(): Promise<void> {
    // A second press before the first is done is for the same entry.
    if (this.#saving) return;
    const [draft, revives, { formState, choices }, asTyped] = [this.#draft, this.#revives, this, this.observation];
    for (const name of fieldsFor(choices)) this.settle(name);
    const problem = formProblem(this, formState, choices, draft, struckOut(this.entries).get(choices.corrects));
    if (problem) this.told = { ...problem, at: 'form' };
    if (problem || !draft) return;
    this.#saving = true;
    const outcome = await this.keepForUser(draft, 'form').finally(() => (this.#saving = false));
    if (!outcome.saved) return;
    if (revives) this.told = { ...this.told, text: `${this.told.text} ${revives}` };
    this.forgetObservation(asTyped);
    this.corrected = null;
    this.dispatchEvent(new LubberResultEvent({ widget: this.localName, inputs: { ...draft }, result: { kind: 'entry', entry: outcome.entry } }));
  }

  async #export(format: BookFormat): Promise<void> {
    if (this.openBook) this.told = { ...(await exportBook(this, this.openBook, format)), at: 'transfer' };
  }

  async #import(file: File): Promise<void> {
    const text = await textOfFile(file);
    if (text !== null) await this.takeOver(text, 'transfer');
    else this.told = { text: sentences(this.t, this.t('record.import.unreadable'), this.t('record.import.nothing-done')), wrong: true, at: 'transfer' };
  }

  async #print(): Promise<void> {
    await this.openBook?.ready;
    await this.#paper.print();
  }

  #makeSwing(): void {
    const observations = this.swing;
    this.told = { text: this.t('record.swing.done', { count: observations.length }), wrong: false, at: 'swing' };
    this.dispatchEvent(
      new LubberResultEvent({ widget: this.localName, inputs: { book: this.openBook?.name, compass: this.watched }, result: { kind: 'swing', observations } }),
    );
  }

  /** A button that vanishes under the finger leaves the keyboard at the head of the page. */
  #leaveCorrection(): void {
    this.cancelCorrection();
    const head = this.renderRoot.querySelector<HTMLElement>('.form summary');
    head?.click();
    head?.focus();
  }

  #toldView(at?: ToldAt): TemplateResult {
    const { text, wrong } = this.told.at === at ? this.told : { text: '', wrong: false };
    return html`<p class="told no-print ${wrong ? 'wrong' : ''}" role="status">${text}</p>`;
  }

  #formView(): TemplateResult {
    const card = this.cardInUse;
    return html`<details class="form no-print">
      <summary part="summary">${this.corrected ? this.t('record.correcting', { number: this.corrected.number }) : this.t('record.new')}</summary>
      ${formView(this, this.formState, this.choices, {
        hasCard: card !== null,
        preview: previewText(this, this.#draft, { watched: this.watched, card }),
        revives: this.#revives,
        onSave: () => void this.#save(),
        onCancel: () => this.#leaveCorrection(),
      })}
      ${this.#toldView('form')}
    </details>`;
  }

  #tableView(book: RecordBook, judged: Judged | null): TemplateResult {
    const { shown, first, pageSize } = this;
    const show = (change: { shown?: number; first?: number }): unknown => Object.assign(this, change);
    return pagedTable(this, book, { compass: this.watched, struck: judged?.struck, shown, first, pageSize, whole: this.#paper.on, show, correct: (entry) => this.correct(entry) });
  }

  /** The book once it is open: the way to enter, what it says, its entries, and the way out of the browser. */
  #openView(book: RecordBook): TemplateResult {
    const judged = this.judged;
    const card = this.cardInUse;
    return html`${this.#formView()}
      ${judged ? judgementView(this, judged.judgement, card && deviationCurve(card), () => this.#makeSwing(), this.#toldView('swing')) : nothing}
      <h3>${this.t(this.#paper.on ? 'record.table.printed' : 'record.table')}</h3>
      ${this.#tableView(book, judged)}
      ${transferView(this, {
        export: (format) => void this.#export(format),
        import: (file) => void this.#import(file),
        print: () => void this.#print(),
      })}
      ${this.#toldView('transfer')}
      <p class="small soft">
        ${sentences(this.t, this.t('record.honest'), book.last ? this.t('record.last', { number: book.last.number, hash: book.last.hash }) : '')}
      </p>`;
  }

  protected override render(): TemplateResult {
    const book = this.openBook;
    if (!book) return this.frame(html`<h2 part="title">${this.t('record.title')}</h2>`);
    const isOpen = book.state !== 'opening' && book.state !== 'blocked';
    return this.frame(html`
      <h2 part="title" tabindex="-1">${this.t('record.title')}</h2>
      <p class="soft small">${this.t('record.book', { book: book.name })}</p>
      ${missingView(this, [])} ${statusView(this, book)}
      ${this.#toldView()}
      ${isOpen ? this.#openView(book) : nothing} ${standingCautions(this)}
      ${isOpen && this.#paper.on ? signatureLines(this, ['record.sign.officer', 'record.sign.master', 'record.sign.dated']) : nothing}
    `);
  }
}
