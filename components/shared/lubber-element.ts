import { html } from 'lit';
import type { CSSResult, CSSResultGroup, CSSResultOrNative, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { AnswerAnnouncer } from './answer-announcer.js';
import { baseStyles } from './base-styles.js';
import { shownLanguage, translate } from './catalogue.js';
import type { Catalogue, Values } from './catalogue.js';
import { ClosedContent } from './closed-content.js';
import { controlStyles } from './control-styles.js';
import { LubberRecordRequestEvent, LubberResultEvent } from './events.js';
import type { RecordRequestDetail } from './events.js';
import { isUnset, readField } from './field.js';
import type { Field, FieldInput, FieldState, StatesOf } from './field.js';
import { fieldStyles } from './field-styles.js';
import { writeDecimalsWith } from './figures.js';
import { FormElement } from './form-element.js';
import { typedTexts } from './form-part.js';
import type { FormAnswer } from './form-part.js';
import { setHeadingLevels } from './heading-levels.js';
import { measureStyles } from './measure-styles.js';
import { inOwnSize } from './own-size.js';
import { PageController, themeOf } from './page-controller.js';
import { printStyles } from './print-styles.js';
import { release } from './register.js';
import { ScrollStops } from './scroll-stops.js';
import { sharedMessages } from './shared-messages.js';
import type { Ship } from './ship-context.js';
import { ShipListener } from './ship-listener.js';
import { themeStyles } from './theme-styles.js';
import { unknownWord } from './unknown-words.js';
import type { Choice } from './unknown-words.js';
import { WidthController } from './width-controller.js';

export const sharedStyles: CSSResultGroup = [measureStyles, themeStyles, baseStyles, controlStyles, fieldStyles, printStyles];

/**
 * What all widgets have in common: theme, language, fields read from properties, the event
 * of a result. A field's property is its text: it holds what the host set or the user typed.
 *
 * @cssproperty --lubber-paper - the ground of the widget
 * @cssproperty --lubber-raise - the ground of fields and buttons
 * @cssproperty --lubber-ink - text and answer
 * @cssproperty --lubber-soft - labels and notes
 * @cssproperty --lubber-line - thin lines between parts
 * @cssproperty --lubber-edge - the edge of fields and buttons
 * @cssproperty --lubber-accent - links, buttons, the focus and the ship’s line in pictures
 * @cssproperty --lubber-on-accent - text on the accent
 * @cssproperty --lubber-body - the body observed in pictures
 * @cssproperty --lubber-warn - text of a caution
 * @cssproperty --lubber-warn-paper - the ground of a caution
 * @cssproperty --lubber-bad - what is refused, and alarms
 * @cssproperty --lubber-red - the red pole, in pictures of polarity
 * @cssproperty --lubber-blue - the blue pole, in pictures of polarity
 * @cssproperty [--lubber-font='Source Sans 3', 'Segoe UI', system-ui, sans-serif] - the typeface
 * @cssproperty [--lubber-size=max(1rem, 16px)] - the size of text, from which all other sizes follow
 * @cssproperty [--lubber-text-small=0.82rem] - the size of labels and notes
 * @cssproperty [--lubber-text-medium=0.92rem] - the size of buttons, tables and cautions
 * @cssproperty [--lubber-text-figure=1.06rem] - the size of figures typed and titles
 * @cssproperty [--lubber-text-large=1.25rem] - the size of figures that stand out
 * @cssproperty [--lubber-text-answer=clamp(2rem, 9vw, 3rem)] - the size of the answer; 2.1rem where the widget is narrow
 * @cssproperty [--lubber-spacing=1] - how much air there is, as a number by which all spaces are multiplied
 * @cssproperty [--lubber-gap=0.75rem] - the space between two fields
 * @cssproperty [--lubber-padding=1.5rem] - the margin inside the frame; 1rem where the widget is narrow
 * @cssproperty [--lubber-radius=3px] - how round corners are
 * @cssproperty [--lubber-target=1.75rem] - the least height of what is pressed; 2.75rem on a bridge
 */
export abstract class LubberElement extends FormElement {
  static readonly lubberlineRelease = release;

  static override styles: CSSResultGroup = sharedStyles;

  protected static override finalizeStyles(styles?: CSSResultGroup): CSSResultOrNative[] {
    return super.finalizeStyles(styles).map(inOwnSize);
  }

  readonly page = new PageController(this);

  readonly width = new WidthController(this);

  /** What stands behind summaries that are closed. */
  readonly closed = new ClosedContent(this);

  readonly #announcer = new AnswerAnnouncer(this);

  readonly #around = new ShipListener(this);

  constructor() {
    super();
    new ScrollStops(this);
  }

  /** The ship around the widget, where there is one: position, time, variation and card. */
  get ship(): Ship | undefined {
    return this.#around.ship;
  }

  /** `day`, `dusk`, `night` or `auto`; without it the page's `data-lubber-theme` holds. */
  @property({ reflect: true }) theme?: string;

  /** Names of fields the user may not change, parted by spaces. */
  @property() locked = '';

  /** `open`, `closed` or `none`: how the working starts. */
  @property() working: 'open' | 'closed' | 'none' = 'closed';

  /** `hidden` keeps the answer back until the host shows it. */
  @property() answer: 'shown' | 'hidden' = 'shown';

  /** How deep in the page the widget's own heading stands, 1 to 6. */
  @property({ attribute: 'heading-level' }) headingLevel?: string | number;

  /** Fields whose refusal is shown: those the user has left. */
  @state() private settled: ReadonlySet<string> = new Set();

  /** What was last done for the user, for the polite live region. */
  @state() protected announcement = '';

  /** What became of the result offered to a record book, until something is changed. */
  @state() offered = '';

  /** English of the widget itself; shared words come with every widget. */
  protected abstract readonly messages: Catalogue;

  /** The fields by the property each stands for. */
  protected abstract readonly fields: Readonly<Record<string, Field<unknown>>>;

  /** The words of each choice, by its property: what is none of them is told, and there is no answer. */
  protected readonly words: Readonly<Record<string, Choice>> = {};

  readonly #lastRead = new Map<string, { readonly field: unknown; readonly input: FieldInput; readonly words: string; readonly state: FieldState<unknown> }>();

  #changedByUser = false;

  /** In another document the styles are made again: a sheet belongs to the document it was made in. */
  adoptedCallback(): void {
    const view = this.ownerDocument.defaultView as typeof globalThis | null;
    if (!view || !this.shadowRoot) return;
    this.shadowRoot.adoptedStyleSheets = (this.constructor as typeof LubberElement).elementStyles.map((style) => {
      const sheet = new view.CSSStyleSheet();
      sheet.replaceSync((style as CSSResult).cssText);
      return sheet;
    });
  }

  /** Goes to the first field. `delegatesFocus` would do so at every click upon a text, too. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>(':enabled:not(fieldset)')?.focus(options);
  }

  /** The text of a catalogue key in the page's language. */
  readonly t = (key: string, values?: Values): string =>
    translate(this.page.language, this.messages[key] === undefined ? sharedMessages : this.messages, key, values);

  /** Who waits for a widget finds all of it. */
  protected override async getUpdateComplete(): Promise<boolean> {
    const settled = await super.getUpdateComplete();
    return this.closed.draw() ? super.getUpdateComplete() : settled;
  }

  /** What became of the field of a property. */
  protected read<T>(field: Field<T>, name: string): FieldState<T> {
    const input = this.input(name);
    const last = this.#lastRead.get(name);
    // Several views ask for the same field in one update; a date may have been changed within.
    const words = this.t('entry.words');
    if (last && last.field === field && last.input === input && last.words === words && typeof input !== 'object') return last.state as FieldState<T>;
    const state = readField(field, input, words);
    this.#lastRead.set(name, { field, input, words, state });
    return state;
  }

  /** What became of each of several fields, by the names of their properties. */
  protected readAll<F extends Readonly<Record<string, Field<unknown>>>>(fields: F): StatesOf<F> {
    return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, this.read(field, name)])) as StatesOf<F>;
  }

  /** The property of a field as it stands; where it is not set, the ship's value. */
  protected input(name: string): FieldInput {
    const own = this.#own(name);
    return isUnset(own) ? (this.ship?.values as Record<string, FieldInput> | undefined)?.[name] : own;
  }

  #own(name: string): FieldInput {
    return (this as unknown as Record<string, FieldInput>)[name];
  }

  /** What stands in a choice and is none of its words; empty where all is well. */
  unknownWord(name: string): string {
    return unknownWord(this.words[name], this.#own(name));
  }

  /** Such words of all choices as a page writes them, `compass="abc"`: while there is one nothing is worked out. */
  get unknownWords(): string[] {
    const { elementProperties } = this.constructor as typeof LubberElement;
    return Object.keys(this.words).flatMap((name) => {
      const attribute = elementProperties.get(name)?.attribute;
      const word = this.unknownWord(name);
      return word ? [`${typeof attribute === 'string' ? attribute : name}="${word}"`] : [];
    });
  }

  /** Whether a choice is not understood. */
  protected get hasUnknownWord(): boolean {
    return this.unknownWords.length > 0;
  }

  /** Whether the host has fixed a field; both spellings of a name are understood, and an instant is its date and time. */
  isLocked(name: string): boolean {
    if (this.isDisabled) return true;
    const kebab = name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const locked = this.locked.split(/\s+/);
    const whole = name === 'date' || name === 'time' ? 'instant' : name;
    return [name, kebab, whole].some((each) => locked.includes(each));
  }

  isSettled(name: string): boolean {
    return this.settled.has(name);
  }

  /** The user has left a field: from now on what is wrong with it is said. */
  settle(name: string): void {
    // A field left empty goes back to what stands in for it; where nothing does, nothing has changed.
    if (this.#own(name) === '') {
      const changedBefore = this.#changedByUser;
      this.change(name, undefined);
      if (isUnset(this.input(name))) this.#changedByUser = changedBefore;
    }
    if (!this.settled.has(name)) this.settled = new Set(this.settled).add(name);
  }

  /** The user has begun to type in a field that was in order: say nothing until it is left. */
  unsettle(name: string): void {
    if (!this.settled.has(name)) return;
    const rest = new Set(this.settled);
    rest.delete(name);
    this.settled = rest;
  }

  /** Says to assistive technology, politely, what was just done. */
  say(words: string): void {
    this.announcement = words;
  }

  /** Sets a property for the user; a result that follows from it is told to the page. */
  change(name: string, value: FieldInput): void {
    // The same again brings no update, and the next one may be the host's.
    const before = this.#own(name);
    if (Object.is(before, value)) return;
    (this as unknown as Record<string, FieldInput>)[name] = value;
    this.formPart.note(name, before, value);
    this.#changedByUser = true;
  }

  /** The plain record of the last result, for the event; null where there is none. */
  protected abstract resultDetail(): { inputs: Record<string, unknown>; result: unknown } | null;

  protected override performUpdate(): void {
    writeDecimalsWith(this.t('figures.decimal'));
    super.performUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    // An attribute taken away leaves null, and so may a framework.
    this.locked ??= '';
    if (this.answer !== 'hidden') this.answer = 'shown';
    const fields = Object.keys(this.fields);
    if (this.#changedByUser || fields.some((name) => (changed as ReadonlyMap<PropertyKey, unknown>).has(name))) this.offered = '';
    // What the host set is no half-typed text: what is wrong with it is said at once.
    if (this.#changedByUser) return;
    for (const name of fields) {
      if ((changed as ReadonlyMap<PropertyKey, unknown>).has(name) && this.#own(name) !== undefined) this.settled = new Set(this.settled).add(name);
    }
  }

  protected override formAnswer(): FormAnswer | null {
    const detail = this.resultDetail();
    return detail && { data: { widget: this.localName, ...detail }, complete: true };
  }

  protected override requiredText(): string {
    const missing = this.renderRoot.querySelector('.headline .waiting')?.textContent ?? '';
    return `${this.t('form.required')} ${missing.replace(/\s+/g, ' ').trim()}`.trim();
  }

  override formResetCallback(): void {
    super.formResetCallback();
    this.settled = new Set();
  }

  override formStateRestoreCallback(state: unknown): void {
    for (const [name, text] of typedTexts(state)) {
      if (!Object.hasOwn(this.fields, name)) continue;
      this.change(name, text);
      this.settle(name);
    }
    // The user did this on an earlier visit: it is not told again.
    this.#changedByUser = false;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (this.headingLevel !== undefined) setHeadingLevels(this.renderRoot, this.headingLevel ?? 2);
    if (!this.#changedByUser) return;
    this.#changedByUser = false;
    this.#announcer.changed();
    const detail = this.resultDetail();
    if (detail) this.dispatchEvent(new LubberResultEvent({ widget: this.localName, ...detail }));
  }

  protected offerRecord(entry: RecordRequestDetail['entry']): void {
    const event = new LubberRecordRequestEvent({ widget: this.localName, entry });
    this.dispatchEvent(event);
    this.offered = this.t(event.taken ? 'record.sent' : 'record.none');
    this.announcement = this.offered;
  }

  /**
   * The frame around a widget: theme, density, language with its direction, and the polite live
   * region. English on a page read from right to left stays English from left to right.
   */
  protected frame(content: TemplateResult): TemplateResult {
    const classes = ['frame', themeOf(this.theme, this.page.theme)];
    if (this.page.bridge) classes.push('bridge');
    if (this.width.narrow) classes.push('narrow');
    if (this.width.close) classes.push('close');
    const { language } = this.page;
    return html`<div class=${classes.join(' ')} part="frame" lang=${shownLanguage(language)} dir=${this.dir || translate(language, { direction: 'ltr' }, 'direction')}>
      ${content}
      <p class="spoken" role="status" aria-live="polite">${this.announcement}</p>
    </div>`;
  }
}
