import { readAnswer } from '../../core/answer/mark.js';
import type { ScoredAnswer } from '../shared/score-event.js';

/** What a learner typed as degrees, east positive; null where the answer was shown or chosen. */
export function givenNumber({ given }: ScoredAnswer): number | null {
  for (const form of ['bearing', 'error', 'signed'] as const) {
    const reading = readAnswer(form, given);
    if (reading.ok) return reading.value;
  }
  return null;
}

/** The answers in `now` that were given since `before`. */
export function newAnswers(before: readonly ScoredAnswer[], now: readonly ScoredAnswer[]): ScoredAnswer[] {
  const key = ({ id, asked, given }: ScoredAnswer): string => JSON.stringify([id, asked, given]);
  const known = new Set(before.map(key));
  return now.filter((each) => !known.has(key(each)));
}

/** An answer's name, unlike within a lesson, of letters that every platform takes: ASCII without blanks. */
export function answerName({ id, asked }: ScoredAnswer): string {
  return `${id}.${asked}`.replace(/[^A-Za-z0-9._-]/g, '-').slice(0, 250);
}

/** A number without exponent and without the noise of floating point: `1e-7` is refused by platforms. */
export function plainNumber(value: number, decimals = 4): string {
  return String(Math.round(value * 10 ** decimals) / 10 ** decimals || 0);
}
