import { answerName, givenNumber, plainNumber } from './given-number.js';
import { clockSpan, clockTime } from './lms-time.js';
import type { ScormVersion, Standing } from './scorm-version.js';

/** One word for two things: how far, and how well. */
function lessonStatus({ passed, complete }: Standing): string {
  if (passed) return 'passed';
  return complete ? 'failed' : 'incomplete';
}

/** SCORM 1.2 (ADL, October 2001), Run-Time Environment, section 3.4: the data model. */
export const scorm12: ScormVersion = {
  kind: 'scorm-1.2',
  api: 'API',
  calls: { initialize: 'LMSInitialize', get: 'LMSGetValue', set: 'LMSSetValue', commit: 'LMSCommit', finish: 'LMSFinish', lastError: 'LMSGetLastError' },
  room: 4096,
  statuses: ['cmi.core.lesson_status'],
  rawScore: 'cmi.core.score.raw',
  mode: 'cmi.core.lesson_mode',
  passMark: 'cmi.student_data.mastery_score',
  passMarkScale: 100,
  // A status still "not attempted" at the end becomes "completed" by itself.
  begun: [['cmi.core.lesson_status', 'incomplete']],
  standing: (standing) => [
    ['cmi.core.score.min', '0'],
    ['cmi.core.score.max', '100'],
    ['cmi.core.score.raw', plainNumber(standing.scaled * 100, 2)],
    ['cmi.core.lesson_status', lessonStatus(standing)],
  ],
  exit: (complete) => ['cmi.core.exit', complete ? '' : 'suspend'],
  sessionTime: (seconds) => ['cmi.core.session_time', clockSpan(seconds)],
  interaction(index, answer, at) {
    const of = (name: string): string => `cmi.interactions.${index}.${name}`;
    const number = givenNumber(answer);
    const isNumber = typeof answer.expected === 'number';
    const response = isNumber ? (number === null ? '' : plainNumber(number)) : answer.given;
    return [
      [of('id'), answerName(answer)],
      // A choice has single letters for its options here; ours have names, as a gap to fill in has.
      [of('type'), isNumber ? 'numeric' : 'fill-in'],
      [of('time'), clockTime(at)],
      [of('correct_responses.0.pattern'), typeof answer.expected === 'number' ? plainNumber(answer.expected) : answer.expected],
      ...(response === '' ? [] : [[of('student_response'), response] as const]),
      [of('result'), answer.correct ? 'correct' : 'wrong'],
    ];
  },
};
