import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { typedTexts } from '../shared/form-part.js';
import type { FormAnswer } from '../shared/form-part.js';
import { LubberElement } from '../shared/lubber-element.js';
import type { ScoreDetail } from '../shared/score-event.js';
import { drillMessages } from './drill-messages.js';
import { attemptsOf, countOf, levelOf, namesKinds, passMarkOf } from './drill-order.js';
import { drillScore } from './drill-score.js';
import { DrillSession } from './drill-session.js';
import type { DrillState } from './drill-state.js';

/** Common practice, no source: four in five to pass, a second attempt, a set for a quarter of an hour. */
export const USUAL = { passMark: 0.8, attempts: 2, count: 5, level: 1 };

/** A set of exercises as a page orders it, keeps it and hears of it. */
export abstract class DrillSetElement extends LubberElement {
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

  protected readonly messages = drillMessages;
  protected readonly fields = {};
  protected override readonly words = { kind: namesKinds, view: ['exercise', 'sheet', 'key'] };

  protected readonly session = new DrillSession({ kind: '', level: USUAL.level, count: USUAL.count });

  /** How far the learner has come, as plain data: stored and set again, the drill goes on there. */
  get state(): DrillState | null {
    this.#prepare();
    return this.session.state;
  }

  set state(value: unknown) {
    this.session.offer(value);
    this.requestUpdate();
  }

  /** The score as the event tells it. */
  get result(): ScoreDetail | null {
    this.#prepare();
    const { exercises, state } = this.session;
    return state && drillScore(exercises, state, this.passMarkInForce, this.attemptsInForce);
  }

  protected get passMarkInForce(): number {
    return passMarkOf(this.passMark) ?? USUAL.passMark;
  }

  protected get attemptsInForce(): number {
    return attemptsOf(this.attempts) ?? USUAL.attempts;
  }

  /** What the page orders goes before what was stored or drawn. */
  #prepare(): void {
    const [level, count] = [levelOf(this.level), countOf(this.count)];
    this.session.storageKey = this.storageKey;
    this.session.prepare({
      ...(this.seed ? { seed: String(this.seed) } : {}),
      ...(this.kind ? { kind: this.kind } : {}),
      ...(level === null ? {} : { level }),
      ...(count === null ? {} : { count }),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#takeEarlyState();
    this.session.watch.start();
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
    this.session.watch.stop();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#prepare();
    // What a learner does is kept for the form as a whole.
    this.formPart.note('state', undefined, this.session.state);
  }

  protected override resultDetail(): null {
    return null;
  }

  /** A form is given the score, from the first answer on; `required` asks for every exercise. */
  protected override formAnswer(): FormAnswer | null {
    const { result } = this;
    return result && result.answers.length > 0 ? { data: { widget: this.localName, ...result }, complete: result.complete } : null;
  }

  override formStateRestoreCallback(kept: unknown): void {
    for (const [name, text] of typedTexts(this, kept)) if (name === 'state') this.state = JSON.parse(text) as unknown;
  }

  /** The form begins anew, and so does the set. */
  override formResetCallback(): void {
    super.formResetCallback();
    this.session.restart();
  }
}
