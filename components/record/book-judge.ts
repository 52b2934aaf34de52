import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { AdviceSettings } from '../../core/record/advice-settings.js';
import type { MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import { judgeRecord } from '../../core/record/judge-record.js';
import type { RecordJudgement } from '../../core/record/judge-record.js';
import { struckOut } from '../../core/record/standing-entries.js';

/** By what a book is judged. */
export interface JudgedBy {
  readonly compass: MagneticCompass;
  readonly card: DeviationCard | null;
  readonly settings: Partial<AdviceSettings> | undefined;
  readonly now: Date;
}

/** What follows from the entries: the judgement, and by which later entry each is struck out. */
export interface Judged {
  readonly judgement: RecordJudgement;
  readonly struck: ReadonlyMap<number, number>;
}

/** Judges a book: once for each state of its entries, card, settings and minute, since several views ask. */
export class BookJudge {
  #of: readonly unknown[] = [];
  #judged: Judged | null = null;

  judge(entries: readonly RecordEntry[], { compass, card, settings = {}, now }: JudgedBy): Judged {
    const minute = Math.floor(now.getTime() / 60_000);
    const of = [entries, compass, JSON.stringify(card), JSON.stringify(settings), minute];
    if (!this.#judged || of.some((part, place) => part !== this.#of[place])) {
      this.#of = of;
      this.#judged = { judgement: judgeRecord(entries, { compass, card, now, settings }), struck: struckOut(entries) };
    }
    return this.#judged;
  }
}
