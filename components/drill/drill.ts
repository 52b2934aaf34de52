import { html, nothing } from 'lit';
import type { CSSResultGroup, TemplateResult } from 'lit';
import { state as internal } from 'lit/decorators.js';
import { answerStyles } from '../shared/answer-styles.js';
import { errorColumnStyles } from '../shared/error-column-styles.js';
import type { FieldInput } from '../shared/field.js';
import { listText } from '../shared/list-text.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { mainButtonStyles } from '../shared/main-button-styles.js';
import { missingView } from '../shared/missing-view.js';
import { printAlone } from '../shared/print-alone.js';
import { LubberScoreEvent } from '../shared/score-event.js';
import { deskView, hintText } from './desk-view.js';
import { levelOf } from './drill-order.js';
import { drillScore } from './drill-score.js';
import { DrillSetElement, USUAL } from './drill-set-element.js';
import { isDone } from './drill-state.js';
import type { DrillState, ExerciseState } from './drill-state.js';
import { drillStyles } from './drill-styles.js';
import { markExercise, nextOpen } from './marking.js';
import { spokenOutcome } from './outcome-view.js';
import { progressView } from './progress-view.js';
import { fieldName } from './question-view.js';
import { setupView } from './setup-view.js';
import { keyView, sheetView } from './sheet-view.js';
import { summaryView } from './summary-view.js';

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
export class LubberDrill extends DrillSetElement {
  static override styles: CSSResultGroup = [sharedStyles, mainButtonStyles, answerStyles, errorColumnStyles, drillStyles];

  @internal() private message = '';
  @internal() private chosen: { kind: string; level: number } = { kind: '', level: USUAL.level };

  /** What the user typed or chose goes into the state; no property of the widget changes. */
  override change(name: string, value: FieldInput): void {
    const text = String(value ?? '');
    if (name === 'setup-kind') this.chosen = { ...this.chosen, kind: text === 'all' ? '' : text };
    if (name === 'setup-level') this.chosen = { ...this.chosen, level: levelOf(text) ?? USUAL.level };
    const { now } = this.session;
    if (!now || !name.startsWith(fieldName(''))) return;
    this.session.change({ texts: { ...now.each.texts, [name.slice(fieldName('').length)]: text } });
    this.requestUpdate();
  }

  override formResetCallback(): void {
    super.formResetCallback();
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
    const { now } = this.session;
    if (!now || this.isDisabled || isDone(now.each, this.attemptsInForce)) return;
    const { exercise, each } = now;
    const marking = markExercise(exercise, each);
    if (marking.outcome !== 'marked') {
      const labels = listText(this.t, marking.questions.map(({ code }) => this.t(`drill.asked.${code}`)));
      for (const { code } of marking.questions) if (marking.outcome === 'unreadable') this.settle(fieldName(code));
      this.#tell(this.t(marking.outcome === 'open' ? 'drill.open' : 'drill.mend', { fields: labels }));
      const first = fieldName(marking.questions[0]?.code ?? '');
      this.#focus(`#${first}, [name="${first}"]`);
      return;
    }
    const { change } = marking;
    this.session.change(change);
    const done = isDone({ ...each, ...change }, this.attemptsInForce);
    this.#tell(this.#leftText(change), spokenOutcome(this, exercise, change, done));
    this.#fire();
    if (done) this.#focus('#onward');
  }

  /** How many attempts are left after one that was not right. */
  #leftText({ tries, score }: Pick<ExerciseState, 'tries' | 'score'>): string {
    if (score === 1 || this.attemptsInForce === 0) return '';
    const left = this.attemptsInForce - tries;
    if (left <= 0) return this.t('drill.closed');
    return left === 1 ? this.t('drill.left.one') : this.t('drill.left.many', { number: left });
  }

  #hint(): void {
    const { now } = this.session;
    if (!now) return;
    this.session.change({ hinted: true });
    this.requestUpdate();
    this.say(hintText(this, now.exercise));
    // The button pressed goes; a field would bring up the keys of a telephone, over the hint.
    this.#focus('#check');
  }

  #show(): void {
    const { now } = this.session;
    if (!now || isDone(now.each, this.attemptsInForce)) return;
    this.session.change({ shown: true });
    this.#tell(this.t('drill.was-shown'), spokenOutcome(this, now.exercise, now.each, true));
    this.#fire();
    this.#focus('#onward');
  }

  #go(index: number): void {
    this.session.go(index);
    this.#turn(index < (this.session.state?.count ?? 0) ? undefined : '#summary');
  }

  /** The button pressed is not in the other view. */
  #look(view: LubberDrill['view']): void {
    this.view = view;
    this.#focus();
  }

  #restart(): void {
    this.session.restart();
    this.#turn();
  }

  #draw(): void {
    this.session.drawOthers(this.#isFree ? this.chosen : {});
    this.#turn();
  }

  /** Another page of the set: the old message goes, and the reader is led to its head. */
  #turn(selector?: string): void {
    this.message = this.announcement = '';
    this.requestUpdate();
    this.#focus(selector);
  }

  /** Whether the page has left it to the learner what to practise. */
  get #isFree(): boolean {
    return this.kind === '' && this.seed === undefined && this.level === undefined && !this.isLocked('kind');
  }

  #focus(selector = '#title'): void {
    void this.updateComplete.then(() => this.shadowRoot?.querySelector<HTMLElement>(selector)?.focus());
  }

  #againButton(main: boolean): TemplateResult {
    const again = this.seed ? (): void => this.#restart() : (): void => this.#draw();
    return html`<button part="button" type="button" class=${main ? 'main' : ''} id="onward" @click=${again}>${this.t(this.seed ? 'drill.again' : 'drill.new')}</button>`;
  }

  /** From a closed exercise to the next open one, to the summary, or to other exercises. */
  #onward(drill: DrillState): TemplateResult {
    if (drill.count === 1) return this.#againButton(false);
    const next = nextOpen(drill.exercises.map((each) => isDone(each, this.attemptsInForce)), drill.at);
    return html`<button part="button" type="button" class="main" id="onward" @click=${() => this.#go(next ?? drill.count)}>
      ${this.t(next === null ? 'drill.finish' : 'drill.next')}
    </button>`;
  }

  #exerciseView(drill: DrillState): TemplateResult {
    const { now, exercises } = this.session;
    const attempts = this.attemptsInForce;
    const score = drillScore(exercises, drill, this.passMarkInForce, attempts);
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
        : summaryView(this, { exercises, state: drill, score, passMark: this.passMarkInForce, attempts }, this.#againButton(true))}`;
  }

  #footView(): TemplateResult {
    const way = (view: LubberDrill['view'], key: string): TemplateResult | typeof nothing =>
      this.view === view ? nothing : html`<button part="button" type="button" class="plain" @click=${() => this.#look(view)}>${this.t(key)}</button>`;
    return html`<div class="row foot no-print">
      ${this.view === 'exercise' ? nothing : html`<button part="button" type="button" class="main" @click=${() => printAlone(this)}>${this.t('print')}</button>`}
      ${way('exercise', 'drill.sheet.back')} ${way('sheet', 'drill.sheet.open')} ${this.answer === 'hidden' ? nothing : way('key', 'drill.sheet.key')}
    </div>`;
  }

  protected override render(): TemplateResult {
    const { state: drill, exercises } = this.session;
    if (!drill || this.hasUnknownWord) return this.frame(missingView(this, []));
    const sheet = { exercises, seed: drill.seed, level: drill.level };
    const key = this.view === 'key' && this.answer === 'shown';
    return this.frame(html`${key ? keyView(this, sheet) : this.view === 'sheet' ? sheetView(this, sheet) : this.#exerciseView(drill)} ${this.#footView()}`);
  }
}
