import type { Catalogue } from './catalogue.js';

/** English of a card handed over, the limits on it and what is odd about it. */
export const deviationCardMessages: Catalogue = {
  'card.problem': 'The card given to this widget cannot be read: {where} {reason}.',
  'card.problem.not-an-object': 'is no card',
  'card.problem.not-json': 'is not JSON',
  'card.problem.unknown-kind': 'is none of table, approximate and exact',
  'card.problem.no-rows': 'has no rows',
  'card.problem.too-many-rows': 'has too many rows',
  'card.problem.not-a-number': 'is not a number',
  'card.problem.out-of-range': 'is out of range',
  'card.problem.headings-disagree': 'give one heading two deviations',
  'limit': 'Limit',
  'limit.flag-five': '5° on every heading (flag notices)',
  'limit.after-adjustment': '3° after adjustment (ISO 25862)',
  'limit.in-service': '5° in service (ISO 25862)',
  'limit.panama-canal': 'below 7° (Panama Canal)',
  'limit.source': 'Source: {source}. The rule of the flag State prevails.',
  'caution.beyond-limit': 'The deviation of {deviation} on {heading} is beyond the limit of {limit}.',
  'caution.slope-too-steep': 'The curve is too steep for one answer: from {from} to {to} magnetic more than one compass heading answers.',
  'caution.lost-headings': 'On {count} degrees of the compass this card gives no deviation, or two.',
  'caution.wide-gap': 'Nothing is known between {from} and {to}: the curve is bridged by guess there.',
  'caution.half-of-compass': 'Half the compass or more is without a reading, from {from} to {to}: what the curve says there is a guess.',
  'caution.constant-card': 'The card says one thing, {mean}, on every heading: check the lubber line, the azimuth circle and the variation.',
  'caution.sum-not-zero': 'The mean of all headings is {mean}, a constant error: check the lubber line, the azimuth circle and the variation.',
};
