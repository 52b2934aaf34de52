import type { Catalogue } from './catalogue.js';
import { errorStepMessages } from './error-step-messages.js';
import { sightMessages } from './sight-messages.js';
import { zoneMessages } from './zone-messages.js';

/** English that every widget of a sight shares: its fields, the error and its split, what is odd about it. */
export const sightAnswerMessages: Catalogue = {
  ...sightMessages,
  ...errorStepMessages,
  ...zoneMessages,
  'sight.error': 'Error',
  'sight.gyroError': 'Gyro error',
  'sight.gyro.low': 'gyro low',
  'sight.gyro.high': 'gyro high',
  'sight.practice': 'say {error}',
  'sight.split.true': 'true bearing',
  'sight.split.variation': 'variation',
  'sight.split.deviation': 'deviation found',
  'sight.split.card': 'by the card',
  'sight.split.difference': 'difference',
  'sight.worthless': 'not to be used, see below',
  'sight.split.onHeading': 'on {heading} C',
  'sight.split.noHeading': 'head not entered',
  'sight.split.given': 'as entered',
  'sight.split.unknown': 'not known',
  'sight.mark.true': 'true',
  'sight.mark.compass': 'compass',
  'sight.mark.gyro': 'gyro',
  'sight.mark.error': 'error',
  'doubt.reading': 'the bearing as read',
  'doubt.variation': 'the variation',
  'accepted.doubt.°': 'Accepted: 0 to 10°, one standard deviation.',
  'caution.gyro-high-latitude': 'Beyond 75° of latitude little holds a gyro to the meridian: its error grows, and changes with course and speed. Check it often.',
  'caution.looks-like-magnetic': 'This error is nearly the variation, {variation}: was the bearing read from a magnetic compass?',
  'caution.looks-like-gyro': 'The error is nearly nothing where the variation is {variation}: was the bearing read from a gyro?',
  'caution.variation-unlike-model': 'The variation entered, {given}, is far from the model’s {modelled} here: check its name, E or W, the position, and the chart for a note of an anomaly.',
  'caution.variation-turned': 'The error is nearly the variation of {variation} the wrong way: has east been taken for west?',
  'caution.variation-missing': 'The magnetic models hold from 2015 to 2030. Enter the variation of the chart to get the deviation.',
  'sight.untimed': 'Enter the time of the bearing to keep it in the record.',
};
