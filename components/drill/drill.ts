import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state as internal } from 'lit/decorators.js';
import { answerStyles } from '../shared/answer-styles.js';
import type { FieldInput } from '../shared/field.js';
import type { FormAnswer } from '../shared/form-part.js';
import { listText } from '../shared/list-text.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { printAlone } from '../shared/print-alone.js';
import { LubberScoreEvent } from '../shared/score-event.js';
import type { ScoreDetail } from '../shared/score-event.js';
import { deskView, hintText } from './desk-view.js';
import { drillMessages } from './drill-messages.js';
import { attemptsOf, countOf, levelOf, namesKinds, passMarkOf } from './drill-order.js';
import { drillScore } from './drill-score.js';
import { DrillSession } from './drill-session.js';
import { isDone } from './drill-state.js';
import type { DrillState, ExerciseState } from './drill-state.js';
import { drillStyles } from './drill-styles.js';
import { markExercise, nextOpen } from './marking.js';
import { progressView } from './progress-view.js';
import { fieldName, verdictText } from './question-view.js';
import { setupView } from './setup-view.js';
import { keyView, sheetView } from './sheet-view.js';
import { summaryView } from './summary-view.js';

/** Common practice, no source: four in five to pass, a second attempt, a set for a quarter of an hour. */
const USUAL = { passMark: 0.8, attempts: 2, count: 5, level: 1 };

/**
 * Exercises drawn by a seed and marked as an assessor would: the learner fills in the steps or
 * only the result, and hears which mistake leads to a wrong number. No time limits.
 *
 * @element lubber-drill
 * @fires lubber-score - after each answer marked or shown: `scaled`, `passed`, `complete`, `seconds`, `answers`
 * @csspart frame - the whole widget
 * @csspart title - the heading
 * @csspart field - one field with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - a table
 * @csspart progress - the exercises of the set by number
 * @csspart task - what is to be done
 * @csspart givens - what is told
 * @csspart verdict - what is said of one answer
 * @csspart outcome - a closed exercise, line by line
 * @csspart answer - the score of the set
 * @csspart working - the steps of the working
 * @csspart sheet - the exercises on paper
 * @csspart key - the answers on paper
 * @csspart hint - the hint asked for
 * @csspart message - what was last said of an answer
 */
export class LubberDrill extends LubberElement {
  static override styles: CSSResultGroup = [sharedStyles, answerStyles, drillStyles];

  /** Kinds to practise, parted by spaces: `conversion`, `amplitude` …; empty for all in turn. */
  @property() kind = '';

  /** 1 to 3. */
  @property() level?: string | number;

  /** Any text: the same seed, kind, level and count are the same exercises. One is drawn where none is given. */
  @property() seed?: string;

  /** How many exercises, 1 to 100. */
  @property() count?: string | number;

  /** The score that passes, 0 to 1 or a percentage. */
  @property({ attribute: 'pass-mark' }) passMark?: string | number;

  /** How often an exercise may be answered; 0 for as often as one likes. */
  @property() attempts?: string | number;

  /** Where the browser may keep how far the learner has come; left out, nowhere. */
  @property({ attribute: 'storage-key' }) storageKey?: string;

  /** The exercises one by one, all on a `sheet` for paper, or its `key`. */
  @property() view: 'exercise' | 'sheet' | 'key' = 'exercise';

  @internal() private message = '';
  @internal() private chosen: { kind: string; level: number } = { kind: '', level: USUAL.level };

  protected readonly messages = drillMessages;
  protected readonly fields = {};
  protected override readonly words = { kind: namesKinds, view: ['exercise', 'sheet', 'key'] };

  readonly #session = new DrillSession({ kind: '', level: USUAL.level, count: USUAL.count });

  /** How far the learner has come, as plain data: stored and set again, the drill goes on there. */
  get state(): DrillState | null {
    this.#prepare();
    return this.#session.state;
  }

  set state(value: unknown) {
    this.#session.offer(value);
    this.requestUpdate();
  }

  /** The score as the event tells it. */
  get result(): ScoreDetail | null {
    this.#prepare();
    const { exercises, state } = this.#session;
    return state && drillScore(exercises, state, this.#passMark, this.#attempts);
  }

  get #passMark(): number {
    return passMarkOf(this.passMark) ?? USUAL.passMark;
  }

  get #attempts(): number {
    return attemptsOf(this.attempts) ?? USUAL.attempts;
  }

  /** What the page orders goes before what was stored or drawn. */
  #prepare(): void {
    const [level, count] = [levelOf(this.level), countOf(this.count)];
    this.#session.storageKey = this.storageKey;
    this.#session.prepare({
      ...(this.seed ? { seed: String(this.seed) } : {}),
      ...(this.kind ? { kind: this.kind } : {}),
      ...(level === null ? {} : { level }),
      ...(count === null ? {} : { count }),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#takeEarlyState();
    this.#session.watch.start();
  }

  /** A state set before the tag was defined lies over the accessor; Lit takes over its own properties only. */
  #takeEarlyState(): void {
    const early = Object.getOwnPropertyDescriptor(this, 'state')?.value as unknown;
    if (early === undefined) return;
    delete (this as { state?: unknown }).state;
    this.state = early;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#session.watch.stop();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#prepare();
  }

  /** What the user typed or chose goes into the state; no property of the widget changes. */
  override change(name: string, value: FieldInput): void {
    const text = String(value ?? '');
    if (name === 'setup-kind') this.chosen = { ...this.chosen, kind: text === 'all' ? '' : text };
    if (name === 'setup-level') this.chosen = { ...this.chosen, level: levelOf(text) ?? USUAL.level };
    const { now } = this.#session;
    if (!now || !name.startsWith(fieldName(''))) return;
    this.#session.change({ texts: { ...now.each.texts, [name.slice(fieldName('').length)]: text } });
    this.requestUpdate();
  }

  protected override resultDetail(): null {
    return null;
  }

  /** A form is given the score, from the first answer on; `required` asks for every exercise. */
  protected override formAnswer(): FormAnswer | null {
    const { result } = this;
    return result && result.answers.length > 0 ? { data: { widget: this.localName, ...result }, complete: result.complete } : null;
  }

  /** The form begins anew, and so does the set. */
  override formResetCallback(): void {
    super.formResetCallback();
    this.#session.restart();
    this.message = '';
  }

  #fire(): void {
    const { result } = this;
    if (result) this.dispatchEvent(new LubberScoreEvent(result));
  }

  /** Shows a message and says it. */
  #tell(message: string, before = ''): void {
    this.message = message;
    this.requestUpdate();
    this.say(`${before} ${message}`.trim());
  }

  #check(): void {
    const { now } = this.#session;
    if (!now || this.isDisabled || isDone(now.each, this.#attempts)) return;
    const { exercise, each } = now;
    const marking = markExercise(exercise, each);
    if (marking.outcome !== 'marked') {
      const labels = listText(this.t, marking.questions.map(({ code }) => this.t(`drill.asked.${code}`)));
      for (const { code } of marking.questions) if (marking.outcome === 'unreadable') this.settle(fieldName(code));
      this.#tell(this.t(marking.outcome === 'open' ? 'drill.open' : 'drill.mend', { fields: labels }));
      this.#focus(`#${fieldName(marking.questions[0]?.code ?? '')}, [name="${fieldName(marking.questions[0]?.code ?? '')}"]`);
      return;
    }
    const { change } = marking;
    this.#session.change(change);
    const verdicts = exercise.asked
      .filter(({ code }) => (change.marked[code] ?? '') !== '')
      .map((question) => `${this.t(`drill.asked.${question.code}`)}: ${verdictText(this, question, change.marked[question.code] ?? '')}`);
    this.#tell(this.#leftText(change), verdicts.join(' '));
    this.#fire();
    if (isDone({ ...each, ...change }, this.#attempts)) this.#focus('#onward');
  }

  /** How many attempts are left after one that was not right. */
  #leftText({ tries, score }: Pick<ExerciseState, 'tries' | 'score'>): string {
    if (score === 1 || this.#attempts === 0) return '';
    const left = this.#attempts - tries;
    if (left <= 0) return this.t('drill.closed');
    return left === 1 ? this.t('drill.left.one') : this.t('drill.left.many', { number: left });
  }

  #hint(): void {
    const { now } = this.#session;
    if (!now) return;
    this.#session.change({ hinted: true });
    this.requestUpdate();
    this.say(hintText(this, now.exercise));
  }

  #show(): void {
    const { now } = this.#session;
    if (!now || isDone(now.each, this.#attempts)) return;
    this.#session.change({ shown: true });
    this.#tell(this.t('drill.was-shown'));
    this.#fire();
    this.#focus('#onward');
  }

  #go(index: number): void {
    this.#session.go(index);
    this.#turn(index < (this.#session.state?.count ?? 0) ? '#title' : '#summary');
  }

  #restart(): void {
    this.#session.restart();
    this.#turn('#title');
  }

  #draw(): void {
    this.#session.drawOthers(this.#isFree ? this.chosen : {});
    this.#turn('#title');
  }

  /** Another page of the set: the old message goes, and the reader is led to its head. */
  #turn(selector: string): void {
    this.message = '';
    this.requestUpdate();
    this.#focus(selector);
  }

  /** Whether the page has left it to the learner what to practise. */
  get #isFree(): boolean {
    return this.kind === '' && this.seed === undefined && this.level === undefined && !this.isLocked('kind');
  }

  #focus(selector: string): void {
    void this.updateComplete.then(() => this.shadowRoot?.querySelector<HTMLElement>(selector)?.focus());
  }

  #againButton(main: boolean): TemplateResult {
    return this.seed
      ? html`<button part="button" type="button" class=${main ? 'main' : ''} id="onward" @click=${() => this.#restart()}>${this.t('drill.again')}</button>`
      : html`<button part="button" type="button" class=${main ? 'main' : ''} id="onward" @click=${() => this.#draw()}>${this.t('drill.new')}</button>`;
  }

  /** From a closed exercise to the next open one, to the summary, or to other exercises. */
  #onward(drill: DrillState): TemplateResult {
    if (drill.count === 1) return this.#againButton(false);
    const next = nextOpen(drill.exercises.map((each) => isDone(each, this.#attempts)), drill.at);
    return html`<button part="button" type="button" class="main" id="onward" @click=${() => this.#go(next ?? drill.count)}>
      ${this.t(next === null ? 'drill.finish' : 'drill.next')}
    </button>`;
  }

  #exerciseView(drill: DrillState): TemplateResult {
    const { now, exercises } = this.#session;
    const attempts = this.#attempts;
    const score = drillScore(exercises, drill, this.#passMark, attempts);
    const at = { number: drill.at + 1, count: drill.count, level: drill.level };
    return html`${this.#isFree ? setupView(this, this.chosen.kind, this.chosen.level, () => this.#draw()) : nothing}
      <h2 part="title" id="title" tabindex="-1">
        ${now ? this.t(`drill.kind.${now.exercise.kind}`) : this.t('drill.sheet')}
        ${now ? html`<span class="at">${this.t(drill.count > 1 ? 'drill.at' : 'drill.at.one', at)}</span>` : nothing}
      </h2>
      ${progressView(this, drill, attempts, (index) => this.#go(index))}
      ${now
        ? deskView(this, {
            exercise: now.exercise,
            state: now.each,
            done: isDone(now.each, attempts),
            message: this.message,
            onCheck: () => this.#check(),
            onHint: () => this.#hint(),
            onShow: () => this.#show(),
            onward: this.#onward(drill),
          })
        : summaryView(this, { exercises, state: drill, score, passMark: this.#passMark, attempts }, this.#againButton(true))}`;
  }

  #footView(): TemplateResult {
    const way = (view: LubberDrill['view'], key: string): TemplateResult | typeof nothing =>
      this.view === view ? nothing : html`<button part="button" type="button" class="plain" @click=${() => (this.view = view)}>${this.t(key)}</button>`;
    return html`<div class="row foot no-print">
      ${this.view === 'exercise' ? nothing : html`<button part="button" type="button" class="main" @click=${() => printAlone(this)}>${this.t('print')}</button>`}
      ${way('exercise', 'drill.sheet.back')} ${way('sheet', 'drill.sheet.open')} ${this.answer === 'hidden' ? nothing : way('key', 'drill.sheet.key')}
    </div>`;
  }

  protected override render(): TemplateResult {
    const { state: drill, exercises } = this.#session;
    if (!drill || this.hasUnknownWord) return this.frame(missingView(this, []));
    const sheet = { exercises, seed: drill.seed, level: drill.level };
    const key = this.view === 'key' && this.answer === 'shown';
    return this.frame(html`${key ? keyView(this, sheet) : this.view === 'sheet' ? sheetView(this, sheet) : this.#exerciseView(drill)} ${this.#footView()}`);
  }
}
