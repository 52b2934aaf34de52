import { amplitudeStepMessages } from '../shared/amplitude-step-messages.js';
import { bodySightMessages } from '../shared/body-sight-messages.js';
import type { Catalogue } from '../shared/catalogue.js';

export const amplitudeMessages: Catalogue = {
  ...amplitudeStepMessages,
  ...bodySightMessages,
  'amplitude.title': 'Compass error by amplitude',
  'amplitude.how.1': 'Choose the body and enter where and when; or let the next rising or setting be found.',
  'amplitude.how.2': 'Take its bearing by the compass at the moment chosen below, upright and steady, and note the ship’s head and the time.',
  'amplitude.how.3': 'Enter the bearing: error, variation, deviation, doubt and working follow.',
  'amplitude.moment': 'What was on the horizon',
  'amplitude.moment.celestial': 'centre on the celestial horizon',
  'amplitude.moment.upper-limb': 'upper limb on the visible horizon',
  'amplitude.moment.centre': 'centre on the visible horizon',
  'amplitude.moment.lower-limb': 'lower limb on the visible horizon',
  'amplitude.rule.Sun':
    'The centre is on the celestial horizon when the lower limb stands {fraction} of the Sun’s diameter above the visible horizon for this height of eye.',
  'amplitude.rule.Moon.above': 'The centre is on the celestial horizon when the Moon’s upper limb is about on the visible horizon: {fraction} of its diameter above it.',
  'amplitude.rule.Moon.below': 'The centre is on the celestial horizon when the Moon’s upper limb is about on the visible horizon: {fraction} of its diameter below it.',
  'amplitude.rule.other': 'It is on the celestial horizon when it stands {fraction} of a Sun’s diameter above the visible horizon.',
  'amplitude.next.rising': 'Next rising',
  'amplitude.next.setting': 'Next setting',
  'amplitude.next.found.rising': '{body} rises at {instant} UTC.',
  'amplitude.next.found.setting': '{body} sets at {instant} UTC.',
  'amplitude.next.in': 'In {wait}.',
  'amplitude.next.later': '{wait} after the time entered.',
  'amplitude.next.stays above': '{body} stays above the horizon here within these 24 hours.',
  'amplitude.next.stays below': '{body} stays below the horizon here within these 24 hours.',
  'amplitude.next.not within 24 h': '{body} does not cross the horizon that way within 24 hours.',
  'amplitude.next.needs': 'Enter latitude and longitude first.',
  'amplitude.next.years': 'The places of the bodies are known from 1900 to 2099.',
  'amplitude.side.rising': 'rising',
  'amplitude.side.setting': 'setting',
  'amplitude.plan': '{body} {side}, {bearing} true, {amplitude}.',
  'amplitude.expected': 'By compass look near {bearing}: variation {variation}, deviation by the card {deviation}.',
  'amplitude.expected.undeviated': 'By compass look near {bearing}, before deviation: variation {variation}.',
  'amplitude.plan.take': 'Take this time over',
  'amplitude.none.pole': 'At the pole every direction is south or north: there is no amplitude.',
  'amplitude.none.stays above': '{body} does not set here on this day: it stays above this altitude. Take an azimuth instead.',
  'amplitude.none.stays below': '{body} does not rise here on this day: it stays below this altitude. Take another body.',
  'amplitude.rate': 'The bearing moves {perMinute} a minute here; a tenth of a degree of altitude moves it {perTenth}.',
  'amplitude.hand': 'By the tables: celestial amplitude and correction between the horizons',
  'amplitude.hand.away': 'The amplitude observed on the visible horizon is corrected by {size} away from the elevated pole.',
  'amplitude.hand.towards': 'The amplitude observed on the visible horizon is corrected by {size} towards the elevated pole.',
  'amplitude.picture': '{body} {side} at {true} true; the compass showed {compass}; the error is {error}.',
  'step.amplitude.correction': 'Correction to the amplitude observed on the visible horizon, north positive',
  'doubt.horizonAltitude': 'altitude at the horizon: refraction, swell, judging by eye',
  'caution.not-at-horizon':
    'By this time the true altitude of the centre is {altitude}, where it should be {expected}: the body was not on the horizon. Do not use the error before time, position and body are checked.',
  'caution.far-from-moment': 'At this time the true altitude of the centre is {altitude}: the body is not on the horizon, and a bearing taken then is no amplitude.',
  'caution.time-and-moment':
    'By this time the true altitude of the centre is {altitude}, where it should be {expected}, and its bearing {effect} off: check the time, and what was on the horizon.',
  'caution.zone-time-ahead':
    'At this time the body is not on the horizon, but by a clock {hours} h ahead of UTC it is: the time looks like zone time (zone description −{hours}).',
  'caution.zone-time-behind':
    'At this time the body is not on the horizon, but by a clock {hours} h behind UTC it is: the time looks like zone time (zone description +{hours}).',
  'caution.longitude-turned': 'At this time the body is not on the horizon here, but in longitude {longitude} it is: has east been taken for west?',
  'caution.latitude-turned': 'At this time the body is not on the horizon here, but in latitude {latitude} it is: has north been taken for south?',
  'caution.steep-horizon':
    'The body crosses the horizon at a slant here: a tenth of a degree of altitude moves the bearing {effect}. An azimuth of a body higher up is the better check.',
  'caution.star-on-horizon': 'Stars are rarely seen on the visible horizon itself; an azimuth at 5 to 30 degrees is surer.',
};
