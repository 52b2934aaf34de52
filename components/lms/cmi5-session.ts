import type { DrillState } from '../drill/drill-state.js';
import type { ScoreDetail } from '../shared/score-event.js';
import type { LaunchData, Cmi5Launch } from './cmi5-launch.js';
import { Cmi5Statements } from './cmi5-statements.js';
import { newAnswers } from './given-number.js';
import { lessonScore, lessonStates, resumeLesson, takePassMark, withNewer } from './lesson.js';
import type { LessonTarget } from './lesson.js';
import { packStates, unpackStates } from './pack-state.js';
import type { RecordStore, Sent } from './record-store.js';
import { StatementQueue } from './statement-queue.js';

/** Our own document beside the platform's. */
const STATE_ID = 'lubberline.lesson';

/** No limit in the standard; a request that outlives its page may hold 64 KiB, statements included. */
const ROOM = 32_000;

/** What was sent under this registration already: `completed` and `passed` once only (cmi5 9.3). */
interface Kept {
  readonly completed: boolean;
  readonly passed: boolean;
  readonly lesson: string;
}

/** One sitting of a launched lesson: from `initialized` to `terminated`. */
export class Cmi5Session {
  readonly #store: RecordStore;
  readonly #statements: Cmi5Statements;
  readonly #queue: StatementQueue;
  readonly #target: LessonTarget;
  readonly #reports: boolean;
  readonly #begun = performance.now();
  /** How the drills stood before the learner did anything here. */
  readonly #before: readonly DrillState[];
  #kept: Kept = { completed: false, passed: false, lesson: '' };
  /** At most one of `passed` and `failed` in a session (cmi5 9.3). */
  #judged = false;
  #answers: ScoreDetail['answers'] = [];
  /** Before `initialized` nothing is said (cmi5 9.3.2), and nothing written over what an earlier sitting has kept. */
  #stage: 'opening' | 'open' | 'over' = 'opening';

  constructor(store: RecordStore, launch: Cmi5Launch, data: LaunchData, target: LessonTarget, before: readonly DrillState[], told: (sent: Sent) => void) {
    this.#store = store;
    this.#statements = new Cmi5Statements(launch, data);
    this.#queue = new StatementQueue(store, told);
    this.#target = target;
    this.#before = before;
    takePassMark(target, data.masteryScore);
    // Opened to look at: initialized and terminated, nothing between (cmi5 10.2.2).
    this.#reports = data.launchMode === 'Normal';
  }

  get #seconds(): number {
    return (performance.now() - this.#begun) / 1000;
  }

  /** Takes up what was kept and says that the lesson has begun. */
  async open(): Promise<void> {
    const kept = ((await this.#store.readState(STATE_ID)) ?? {}) as Partial<Kept>;
    if (this.#stage === 'over') return;
    this.#kept = { completed: kept.completed === true, passed: kept.passed === true, lesson: String(kept.lesson ?? '') };
    const meanwhile = lessonScore(this.#target)?.answers ?? [];
    resumeLesson(this.#target, withNewer(unpackStates(this.#kept.lesson), this.#before, lessonStates(this.#target)));
    const score = lessonScore(this.#target);
    // What was answered while the platform was asked has been told to nobody yet.
    this.#answers = newAnswers(meanwhile, score?.answers ?? []);
    this.#stage = 'open';
    this.#queue.add(this.#statements.initialized());
    // What an earlier sitting had come to and could not say any more.
    if (score && this.#answers.length > 0) this.#judge(score, false);
    if (score) this.report(score);
    await this.#queue.flush();
  }

  report(score: ScoreDetail): void {
    if (!this.#reports || this.#stage !== 'open') return;
    this.#queue.add(...newAnswers(this.#answers, score.answers).map((answer) => this.#statements.answered(answer)));
    this.#answers = score.answers;
    this.#judge(score, false);
    this.save();
  }

  /** Says what can be said once: at the end of the exercises, or when the learner goes having passed. */
  #judge(score: ScoreDetail, leaving: boolean): void {
    if (!this.#reports) return;
    if (score.complete && !this.#kept.completed) {
      this.#queue.add(this.#statements.completed(this.#seconds));
      this.#kept = { ...this.#kept, completed: true };
    }
    const passes = this.#statements.passes(score);
    if (this.#judged || this.#kept.passed || !(score.complete || (leaving && passes))) return;
    this.#queue.add(this.#statements.judged(score, this.#seconds));
    this.#judged = true;
    this.#kept = { ...this.#kept, passed: passes };
  }

  /** Keeps how far the learner has come, and sends what could not be sent before. */
  save(): void {
    if (!this.#reports || this.#stage !== 'open') return;
    const lesson = packStates(lessonStates(this.#target), ROOM);
    if (lesson !== null) this.#kept = { ...this.#kept, lesson };
    void this.#store.writeState(STATE_ID, this.#kept);
    void this.#queue.flush();
  }

  /** Whether there was a session to end. */
  finish(): boolean {
    if (this.#stage === 'opening') this.#stage = 'over';
    if (this.#stage === 'over') return false;
    const score = lessonScore(this.#target);
    // Held back so that everything still waiting leaves in one call, in order.
    this.#queue.hold();
    if (score && this.#answers.length > 0) this.#judge(score, true);
    this.save();
    this.#queue.last(this.#statements.terminated(this.#seconds));
    return true;
  }
}
