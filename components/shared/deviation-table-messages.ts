import type { Catalogue } from './catalogue.js';

/** English of the field into which a table of deviations is typed. */
export const deviationTableMessages: Catalogue = {
  'table.given': 'What is shown was handed over by the page or the ship; what is typed here comes first.',
  'table.how': 'A line for each heading: heading by compass, then deviation. Paste from a spreadsheet or type, in any order.',
  'table.count': 'Headings understood: {count}.',
  'table.title': 'Left out as a title: {title}',
  'table.line': 'Line {line}, “{text}”:',
  'table.more': 'Further lines: {count}.',
  'accepted.table': 'Accepted, a line each: 045 2.5W, or 045, a tab and −2.5. Figures without a letter are easterly only where others have a minus.',
  'refusal.two-columns': 'A heading and a deviation are needed.',
  'refusal.given-twice': 'This heading has another deviation above.',
};
