import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { property, state as internal } from 'lit/decorators.js';
import type { Exercise } from '../../core/drill/exercise.js';
import { answerStyles } from '../shared/answer-styles.js';
import type { FieldInput } from '../shared/field.js';
import { LubberElement, sharedStyles } from '../shared/lubber-element.js';
import { LubberScoreEvent } from '../shared/score-event.js';
import type { ScoreDetail } from '../shared/score-event.js';
import { deskView, hintText } from './desk-view.js';
import { drillMessages } from './drill-messages.js';
import { anySeed, attemptsOf, countOf, exercisesOf, levelOf, passMarkOf } from './drill-order.js';
import { drillScore } from './drill-score.js';
import { freshState, isDone, untouched, withExercise } from './drill-state.js';
import type { DrillOrder, DrillState, ExerciseState } from './drill-state.js';
import { loadState, saveState } from './drill-storage.js';
import { drillStyles } from './drill-styles.js';
import { markExercise, nextOpen } from './marking.js';
import { progressView } from './progress-view.js';
import { fieldName, verdictText } from './question-view.js';
import { readState } from './read-state.js';
import { setupView } from './setup-view.js';
import { keyView, sheetView } from './sheet-view.js';
import { StopWatch } from './stop-watch.js';
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
 * @csspart progress - the exercises of the set by number
 * @csspart task - what is to be done
 * @csspart givens - what is told
 * @csspart field - one field with its label
 * @csspart verdict - what is said of one answer
 * @csspart outcome - a closed exercise, line by line
 * @csspart answer - the score of the set
 * @csspart working - the steps of the working
 * @csspart sheet - the exercises on paper
 * @csspart key - the answers on paper
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

  @internal() private drill: DrillState | null = null;
  @internal() private message = '';
  @internal() private chosen: { kind: string; level: number } = { kind: '', level: USUAL.level };

  protected readonly messages = drillMessages;
  protected readonly fields = {};

  readonly #watch = new StopWatch();
  #exercises: readonly Exercise[] = [];
  /** What holds where the page has said nothing. */
  #own: DrillOrder = { seed: anySeed(), kind: '', level: USUAL.level, count: USUAL.count };
  #offered: unknown = null;

  /** How far the learner has come, as plain data: stored and set again, the drill goes on there. */
  get state(): DrillState | null {
    this.#prepare();
    return this.drill;
  }

  set state(value: unknown) {
    this.#offered = value;
    this.#exercises = [];
    this.requestUpdate();
  }

  /** The score as the event tells it. */
  get result(): ScoreDetail | null {
    this.#prepare();
    return this.drill && drillScore(this.#exercises, this.drill, this.#passMark, this.#attempts);
  }

  get #passMark(): number {
    return passMarkOf(this.passMark) ?? USUAL.passMark;
  }

  get #attempts(): number {
    return attemptsOf(this.attempts) ?? USUAL.attempts;
  }

  get #order(): DrillOrder {
    const { seed, kind, level, count } = this.#own;
    return { seed: this.seed ? String(this.seed) : seed, kind: this.kind || kind, level: levelOf(this.level) ?? level, count: countOf(this.count) ?? count };
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.start();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.stop();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#prepare();
  }

  /** Draws the exercises where the order has changed, and takes up what was offered or kept. */
  #prepare(): void {
    const same = (['seed', 'kind', 'level', 'count'] as const).every((name) => this.drill?.[name] === this.#order[name]);
    if (same && this.#exercises.length > 0) return;
    const offered = this.#offered ?? (this.storageKey ? loadState(this.storageKey) : null);
    this.#offered = null;
    // The seed of a stored set is as good as one drawn now.
    const { seed, kind, level, count } = (offered ?? {}) as Partial<Record<keyof DrillOrder, unknown>>;
    if (typeof seed === 'string' && typeof kind === 'string') {
      this.#own = { seed, kind, level: levelOf(level) ?? this.#own.level, count: countOf(count) ?? this.#own.count };
    }
    const order = this.#order;
    this.#exercises = exercisesOf(order);
    this.drill = readState(offered, order) ?? freshState(order);
  }

  /** Takes a new state, with the time spent since the last. */
  #keep(state: DrillState): void {
    this.drill = { ...state, seconds: state.seconds + this.#watch.lap() };
    if (this.storageKey) saveState(this.storageKey, this.drill);
  }

  #at(): { exercise: Exercise; each: ExerciseState; drill: DrillState } | null {
    const exercise = this.drill && this.#exercises[this.drill.at];
    return exercise && this.drill ? { exercise, each: this.drill.exercises[this.drill.at] ?? untouched, drill: this.drill } : null;
  }

  /** What the user typed or chose goes into the state; no property of the widget changes. */
  override change(name: string, value: FieldInput): void {
    const text = String(value ?? '');
    if (name === 'setup-kind') this.chosen = { ...this.chosen, kind: text === 'all' ? '' : text };
    if (name === 'setup-level') this.chosen = { ...this.chosen, level: levelOf(text) ?? USUAL.level };
    const now = this.#at();
    if (!now || !name.startsWith(fieldName(''))) return;
    const { drill, each } = now;
    this.#keep(withExercise(drill, drill.at, { texts: { ...each.texts, [name.slice(fieldName('').length)]: text } }));
  }

  protected override resultDetail(): null {
    return null;
  }

  #fire(): void {
    const { result } = this;
    if (result) this.dispatchEvent(new LubberScoreEvent(result));
  }

  /** Shows a message and says it. */
  #tell(message: string, before = ''): void {
    this.message = message;
    this.say(`${before} ${message}`.trim());
  }

  #check(): void {
    const now = this.#at();
    if (!now || isDone(now.each, this.#attempts)) return;
    const { exercise, each, drill } = now;
    const marking = markExercise(exercise, each);
    if (marking.outcome !== 'marked') {
      const labels = marking.questions.map(({ code }) => this.t(`drill.asked.${code}`)).join(', ');
      for (const { code } of marking.questions) if (marking.outcome === 'unreadable') this.settle(fieldName(code));
      this.#tell(this.t(marking.outcome === 'open' ? 'drill.open' : 'drill.mend', { fields: labels }));
      this.#focus(`#${fieldName(marking.questions[0]?.code ?? '')}, [name="${fieldName(marking.questions[0]?.code ?? '')}"]`);
      return;
    }
    const { change } = marking;
    this.#keep(withExercise(drill, drill.at, change));
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
    const now = this.#at();
    if (!now) return;
    this.#keep(withExercise(now.drill, now.drill.at, { hinted: true }));
    this.say(hintText(this, now.exercise));
  }

  #show(): void {
    const now = this.#at();
    if (!now || isDone(now.each, this.#attempts)) return;
    this.#keep(withExercise(now.drill, now.drill.at, { shown: true }));
    this.#tell(this.t('drill.was-shown'));
    this.#fire();
    this.#focus('#onward');
  }

  #go(index: number): void {
    if (!this.drill) return;
    this.message = '';
    this.#keep({ ...this.drill, at: index });
    this.#focus(index < this.drill.count ? '#title' : '#summary');
  }

  /** The same exercises again, or others of what is chosen. */
  #restart(order: DrillOrder): void {
    this.message = '';
    this.#own = order;
    this.#exercises = exercisesOf(this.#order);
    this.#keep(freshState(this.#order));
    this.#focus('#title');
  }

  #draw(): void {
    this.#restart({ ...this.#own, seed: anySeed(), ...(this.#isFree ? this.chosen : {}) });
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
      ? html`<button type="button" class=${main ? 'main' : ''} id="onward" @click=${() => this.#restart(this.#own)}>${this.t('drill.again')}</button>`
      : html`<button type="button" class=${main ? 'main' : ''} id="onward" @click=${() => this.#draw()}>${this.t('drill.new')}</button>`;
  }

  /** From a closed exercise to the next open one, to the summary, or to other exercises. */
  #onward(drill: DrillState): TemplateResult {
    if (drill.count === 1) return this.#againButton(false);
    const next = nextOpen(drill.exercises.map((each) => isDone(each, this.#attempts)), drill.at);
    return html`<button type="button" class="main" id="onward" @click=${() => this.#go(next ?? drill.count)}>
      ${this.t(next === null ? 'drill.finish' : 'drill.next')}
    </button>`;
  }

  #exerciseView(drill: DrillState): TemplateResult {
    const now = this.#at();
    const attempts = this.#attempts;
    const score = drillScore(this.#exercises, drill, this.#passMark, attempts);
    const at = { number: drill.at + 1, count: drill.count, level: drill.level };
    return html`${this.#isFree ? setupView(this, this.chosen.kind, this.chosen.level, () => this.#draw()) : nothing}
      <h2 id="title" tabindex="-1">
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
        : summaryView(this, { exercises: this.#exercises, state: drill, score, passMark: this.#passMark, attempts }, this.#againButton(true))}`;
  }

  #footView(): TemplateResult {
    const way = (view: LubberDrill['view'], key: string): TemplateResult | typeof nothing =>
      this.view === view ? nothing : html`<button type="button" class="plain" @click=${() => (this.view = view)}>${this.t(key)}</button>`;
    return html`<div class="row foot no-print">
      ${this.view === 'exercise' ? nothing : html`<button type="button" class="main" @click=${() => globalThis.print()}>${this.t('print')}</button>`}
      ${way('exercise', 'drill.sheet.back')} ${way('sheet', 'drill.sheet.open')} ${this.answer === 'hidden' ? nothing : way('key', 'drill.sheet.key')}
    </div>`;
  }

  protected override render(): TemplateResult {
    const drill = this.drill;
    if (!drill) return this.frame(html``);
    const sheet = { exercises: this.#exercises, seed: drill.seed, level: drill.level };
    const key = this.view === 'key' && this.answer === 'shown';
    return this.frame(html`${key ? keyView(this, sheet) : this.view === 'sheet' ? sheetView(this, sheet) : this.#exerciseView(drill)} ${this.#footView()}`);
  }
}
