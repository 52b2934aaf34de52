import { bodyMessages } from './body-messages.js';
import type { Catalogue } from './catalogue.js';
import { sightAnswerMessages } from './sight-answer-messages.js';

/** English of the sights of a body: besides what all sights share, what hangs on its name, the place and the time. */
export const bodySightMessages: Catalogue = {
  ...bodyMessages,
  ...sightAnswerMessages,
  'doubt.position': 'the position',
  'doubt.time': 'the time',
  'accepted.doubt.s': 'Accepted: 0 to 600 s, one standard deviation.',
  'accepted.doubt.M': 'Accepted: 0 to 60 M, one standard deviation.',
  'caution.other-side': 'An error of {error} puts the body on the other side of the compass: check the bearing, the body and the time.',
  'caution.lost-in-daylight': 'At this time the Sun stands at {sun}: {body} cannot be seen in this light. Check the date, the time and the body.',
  'caution.lost-beside-sun': 'At this time the Moon stands so near the Sun that she cannot be seen. Check the date, the time and the body.',
  'caution.gyro-error-large': 'A gyro error of {error} is large: check the body, the time, and the gyro with its speed and latitude settings.',
  'caution.far-from-card': 'The deviation differs from the card by {difference}, far beyond the doubt of ± {doubt}: check the body, the time and the compass, then the card.',
  'caution.beyond-doubt-of-card': 'The deviation differs from the card by {difference}, more than twice the doubt of ± {doubt}. Take a second sight.',
  'caution.within-doubt-of-card': 'The difference from the card, {difference}, is within the doubt of one sight (± {doubt}).',
  'caution.deviation-large': 'A deviation of {deviation} is large for a corrected compass: check the body, the time and the compass.',
};
