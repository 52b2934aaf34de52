import type { ScoredAnswer } from '../shared/score-event.js';
import { answerName, givenNumber, plainNumber } from './given-number.js';
import { hundredthInstant, isoDuration } from './lms-time.js';
import type { ScormVersion, Standing } from './scorm-version.js';

function successStatus({ passed, complete }: Standing): string {
  if (passed) return 'passed';
  return complete ? 'failed' : 'unknown';
}

/** The numbers that count as right, `3.4[:]3.6`; the name of the right option. */
export function rightPattern({ expected, tolerance }: ScoredAnswer): string {
  if (typeof expected === 'string') return expected;
  const give = tolerance ?? 0;
  return `${plainNumber(expected - give)}[:]${plainNumber(expected + give)}`;
}

/** What was answered, as a number where one was asked; empty where nothing was. */
export function responseText(answer: ScoredAnswer): string {
  if (typeof answer.expected === 'string') return answer.given;
  const number = givenNumber(answer);
  return number === null ? '' : plainNumber(number);
}

/** SCORM 2004 4th edition (ADL, 2009), Run-Time Environment, section 4.2: the data model. */
export const scorm2004: ScormVersion = {
  kind: 'scorm-2004',
  api: 'API_1484_11',
  calls: { initialize: 'Initialize', get: 'GetValue', set: 'SetValue', commit: 'Commit', finish: 'Terminate', lastError: 'GetLastError' },
  room: 64000,
  statuses: ['cmi.completion_status', 'cmi.success_status'],
  rawScore: 'cmi.score.raw',
  mode: 'cmi.mode',
  passMark: 'cmi.scaled_passing_score',
  passMarkScale: 1,
  begun: [['cmi.completion_status', 'incomplete']],
  standing: (standing) => [
    ['cmi.score.min', '0'],
    ['cmi.score.max', '100'],
    // Both: some platforms grade by the one, some by the other.
    ['cmi.score.raw', plainNumber(standing.scaled * 100, 2)],
    ['cmi.score.scaled', plainNumber(standing.scaled)],
    ['cmi.success_status', successStatus(standing)],
    ['cmi.completion_status', standing.complete ? 'completed' : 'incomplete'],
  ],
  // After any other exit the next launch is a new attempt, without what was done and reached (4.2.8): a lesson that is done may be opened again.
  exit: () => ['cmi.exit', 'suspend'],
  sessionTime: (seconds) => ['cmi.session_time', isoDuration(seconds)],
  interaction(index, answer, at) {
    const of = (name: string): string => `cmi.interactions.${index}.${name}`;
    const response = responseText(answer);
    return [
      [of('id'), answerName(answer)],
      [of('type'), typeof answer.expected === 'number' ? 'numeric' : 'choice'],
      [of('timestamp'), hundredthInstant(at)],
      [of('correct_responses.0.pattern'), rightPattern(answer)],
      ...(response === '' ? [] : [[of('learner_response'), response] as const]),
      [of('result'), answer.correct ? 'correct' : 'incorrect'],
    ];
  },
};
