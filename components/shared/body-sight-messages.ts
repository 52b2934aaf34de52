import { bodyMessages } from './body-messages.js';
import type { Catalogue } from './catalogue.js';
import { sightAnswerMessages } from './sight-answer-messages.js';

/** English of the sights of a body: besides what all sights share, what hangs on its name, the place and the time. */
export const bodySightMessages: Catalogue = {
  ...bodyMessages,
  ...sightAnswerMessages,
  'doubt.position': 'the position',
  'doubt.time': 'the time',
  'accepted.doubt.s': 'Accepted: 0 to 600\u00a0s, one standard deviation.',
  'accepted.doubt.M': 'Accepted: 0 to 60\u00a0M, one standard deviation.',
  'caution.time-by-hours': 'The body would stand where it was seen if the time were changed by {hours}\u00a0h: is it zone time (zone description {hours}), or is the hour wrong?',
  'caution.longitude-turned': 'The body would stand where it was seen if the longitude were {longitude}: has east been taken for west?',
  'caution.latitude-turned': 'The body would stand where it was seen if the latitude were {latitude}: has north been taken for south?',
  'caution.lost-in-daylight': 'At this time the Sun stands at {sun}: {body} cannot be seen in this light. Check the date, the time and the body.',
  'caution.lost-beside-sun': 'At this time {body} is too near the Sun to be seen. Check the date, the time and the body.',
};
