import type { Catalogue } from './catalogue.js';

/** English of the limits on a card, and of what is odd about one that is to be used for years. */
export const deviationCardMessages: Catalogue = {
  'limit': 'Limit',
  'limit.flag-five': '5° all round (flag notices)',
  'limit.after-adjustment': '3° as left (ISO 25862)',
  'limit.in-service': '5° in service (ISO 25862)',
  'limit.panama-canal': 'below 7° (Panama Canal)',
  'limit.source': 'Source: {source}. The rule of the flag State prevails.',
  'source.marshall-amsa': 'Republic of the Marshall Islands, Marine Notice 2-011-32 (6/09); AMSA Marine Notice 19/2016 (summary)',
  'source.iso-adjusted': 'ISO 25862:2009, after adjustment (secondary quotation)',
  'source.iso-service': 'ISO 25862:2009, in service (secondary quotation)',
  'source.panama-canal': 'Panama Canal OP Notice N-1-2022, 4.k (summary)',
  'caution.beyond-limit': 'The deviation of {deviation} on {heading} is beyond the limit of {limit}.',
  'caution.constant-card': 'The card says one thing, {mean}, on every heading: check the lubber line, the azimuth circle and the variation.',
  'caution.sum-not-zero': 'The mean of all headings is {mean}, a constant error: check the lubber line, the azimuth circle and the variation.',
};

/** English of a card handed over: why it cannot be read, and what is odd about it for whoever converts by it. */
export const givenCardMessages: Catalogue = {
  'card.problem': 'The card given to this widget cannot be read: {where} {reason}.',
  'card.problem.not-an-object': 'is no card',
  'card.problem.not-json': 'is not JSON',
  'card.problem.unknown-kind': 'is none of table, approximate and exact',
  'card.problem.no-rows': 'has no rows',
  'card.problem.too-many-rows': 'has too many rows',
  'card.problem.not-a-number': 'is not a number',
  'card.problem.out-of-range': 'is out of range',
  'card.problem.headings-disagree': 'give one heading two deviations',
  'caution.slope-too-steep': 'The curve is too steep for one answer: from {from} to {to} magnetic more than one compass heading answers.',
  'caution.lost-headings': 'Degrees of the compass on which this card gives no deviation, or two: {count}.',
  'caution.wide-gap': 'Nothing is known between {from} and {to}: the curve is bridged by guess there.',
  'caution.half-of-compass': 'Half the compass or more is without a reading, from {from} to {to}: what the curve says there is a guess.',
};
