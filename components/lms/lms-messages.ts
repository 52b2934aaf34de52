import type { Catalogue } from '../shared/catalogue.js';

/** What is said, quietly, of how a lesson stands with the platform. */
export const lmsMessages: Catalogue = {
  'lms.none': 'No learning platform here: everything works, nothing is reported.',
  'lms.opening': 'Asking the learning platform…',
  'lms.open': 'Your results are reported to the learning platform after every answer.',
  'lms.review': 'Opened to look at: nothing is reported to the learning platform.',
  'lms.refused': 'The learning platform would not open a session: everything works, nothing is reported.',
  'lms.trouble': 'The learning platform did not take the last report. The next one carries everything again.',
  'lms.finished': 'The session with the learning platform has ended. Open the lesson from the platform again to report more.',
};
