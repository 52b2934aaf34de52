import { html } from 'lit';
import type { CSSResult, CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { AnswerAnnouncer } from './answer-announcer.js';
import { baseStyles } from './base-styles.js';
import { shownLanguage, translate } from './catalogue.js';
import { ClosedContent } from './closed-content.js';
import { controlStyles } from './control-styles.js';
import { LubberRecordRequestEvent, LubberResultEvent } from './events.js';
import type { RecordRequestDetail } from './events.js';
import { FieldElement } from './field-element.js';
import { fieldStyles } from './field-styles.js';
import type { FormAnswer } from './form-part.js';
import { setHeadingLevels } from './heading-levels.js';
import { measureStyles } from './measure-styles.js';
import { inOwnFigures } from './own-figures.js';
import { inOwnSize } from './own-size.js';
import { themeOf } from './page-controller.js';
import type { Theme } from './page-controller.js';
import { printStyles } from './print-styles.js';
import { release } from './register.js';
import { ScrollStops } from './scroll-stops.js';
import { themeStyles } from './theme-styles.js';
import { WidthController } from './width-controller.js';

export const sharedStyles: CSSResultGroup = [measureStyles, themeStyles, baseStyles, controlStyles, fieldStyles, printStyles];

/**
 * What all widgets have in common beside their fields: frame, theme and language, what is said
 * aloud, the event of a result, the offer to a record book.
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
export abstract class LubberElement extends FieldElement {
  static readonly lubberlineRelease = release;

  static override styles: CSSResultGroup = sharedStyles;

  readonly width = new WidthController(this);

  /** What stands behind summaries that are closed. */
  readonly closed = new ClosedContent(this);

  readonly #announcer = new AnswerAnnouncer(this);

  constructor() {
    super();
    new ScrollStops(this);
  }

  /** `day`, `dusk`, `night` or `auto`; without it the page's `data-lubber-theme` holds. */
  @property({ reflect: true }) theme?: Theme;

  /** `open`, `closed` or `none`: how the working starts. */
  @property() working: 'open' | 'closed' | 'none' = 'closed';

  /** `hidden` keeps the answer back until the host shows it. */
  @property() answer: 'shown' | 'hidden' = 'shown';

  /** How deep in the page the widget's own heading stands, 1 to 6. */
  @property({ attribute: 'heading-level' }) headingLevel?: string | number;

  /** What was last done for the user, for the polite live region. */
  @state() protected announcement = '';

  /** What became of the result offered to a record book, until something is changed. */
  @state() offered = '';

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    // Not when the tag is defined: of all that a script holds a page shows one widget or two.
    (this.constructor as typeof LubberElement).elementStyles.forEach(inOwnSize);
    return super.createRenderRoot();
  }

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

  /** Who waits for a widget finds all of it. */
  protected override async getUpdateComplete(): Promise<boolean> {
    const settled = await super.getUpdateComplete();
    return this.closed.draw() ? super.getUpdateComplete() : settled;
  }

  /** Says to assistive technology, politely, what was just done. */
  say(words: string): void {
    // A live region is silent where its text stays the same: what is done again is said again.
    this.announcement = words === this.announcement ? `${words}\u00a0` : words;
  }

  /** The plain record of the last result, for the event; null where there is none. */
  protected abstract resultDetail(): { inputs: Record<string, unknown>; result: unknown } | null;

  protected override performUpdate(): void {
    inOwnFigures(this);
    super.performUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (this.answer !== 'hidden') this.answer = 'shown';
    if (this.changedByUser || this.changedFields(changed).length > 0) this.offered = '';
  }

  protected override formAnswer(): FormAnswer | null {
    const detail = this.resultDetail();
    return detail && { data: { widget: this.localName, ...detail }, complete: true };
  }

  protected override requiredText(): string {
    const missing = this.renderRoot.querySelector('.headline .waiting')?.textContent ?? '';
    return `${this.t('form.required')} ${missing.replace(/\s+/g, ' ').trim()}`.trim();
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (changed.has('headingLevel') || this.headingLevel) setHeadingLevels(this.renderRoot, this.headingLevel);
    if (!this.changedByUser) return;
    this.changedByUser = false;
    this.#announcer.changed();
    const detail = this.resultDetail();
    if (detail) this.dispatchEvent(new LubberResultEvent({ widget: this.localName, ...detail }));
  }

  protected offerRecord(entry: RecordRequestDetail['entry']): void {
    const event = new LubberRecordRequestEvent({ widget: this.localName, entry });
    this.dispatchEvent(event);
    this.offered = this.t(event.taken ? 'record.sent' : 'record.none');
    this.say(this.offered);
  }

  /**
   * The frame around a widget: theme, density, language with its direction, and the polite live
   * region. English on a page read from right to left stays English from left to right.
   */
  protected frame(content: TemplateResult): TemplateResult {
    const { narrow, close } = this.width;
    const classes = ['frame', themeOf(this.theme, this.page.theme), this.page.bridge && 'bridge', narrow && 'narrow', close && 'close'];
    const { language } = this.page;
    return html`<div class=${classes.filter(Boolean).join(' ')} part="frame" lang=${shownLanguage(language)} dir=${this.dir || translate(language, { direction: 'ltr' }, 'direction')}>
      ${content}
      <p class="spoken" role="status" aria-live="polite">${this.announcement}</p>
    </div>`;
  }
}
