import type { Catalogue } from './catalogue.js';

/** English of what is odd about a curve laid through readings. */
export const deviationFitMessages: Catalogue = {
  'caution.no-readings': 'There are no readings.',
  'caution.too-few-readings': 'Headings taken: {count}. That is few; eight at least are taken.',
  'caution.too-few-to-find-slips': 'With {count} headings a slip of a few degrees in one of them cannot be found.',
  'caution.heading-twice': 'The heading {heading} was taken more than once: the readings differ by {apart}.',
  'caution.no-fit': 'No curve can be laid through these readings.',
  'caution.not-determined': 'The headings taken do not determine {coefficients}.',
  'caution.suspect-readings': 'Number of readings that do not fit the rest: {count}. Look at them again.',
  'caution.exact-fit-better': 'The five-term series fails by {difference} on {heading}: use the exact coefficients.',
  'caution.beyond-approximate': 'Deviations of {largest} are beyond the {limit} up to which the five-term series is good: use the exact coefficients.',
  'caution.constant-curve': 'The readings differ by a constant only: check the lubber line, the azimuth circle, the variation and the gyro.',
  'caution.scatter-exceeds-doubt': 'The readings scatter more than the doubt claimed for them.',
  'caution.reversed-naming': 'These readings are the old card with east and west exchanged: has the naming been reversed?',
};
