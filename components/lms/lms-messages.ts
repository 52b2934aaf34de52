import type { LmsStatus } from './connection.js';

/** What is said, quietly, of how a lesson stands with the platform. */
export const lmsMessages: Readonly<Record<LmsStatus, string>> = {
  none: 'No learning platform here: everything works, nothing is reported.',
  opening: 'Asking the learning platform…',
  open: 'Your results are reported to the learning platform after every answer.',
  review: 'Opened to look at: nothing is reported to the learning platform.',
  refused: 'The learning platform would not open a session: everything works, nothing is reported.',
  trouble: 'The learning platform did not take the last report. The next one carries everything again.',
  finished: 'The session with the learning platform has ended. Open the lesson from the platform again to report more.',
};
