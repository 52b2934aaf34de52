import type { Catalogue } from './catalogue.js';
import { deviationCardMessages, givenCardMessages } from './deviation-card-messages.js';
import { deviationChartMessages } from './deviation-chart-messages.js';
import { deviationFitMessages } from './deviation-fit-messages.js';
import { deviationTableMessages } from './deviation-table-messages.js';

/** English of what the widgets of swing, curve and card share; a smaller widget takes the parts it needs. */
export const deviationMessages: Catalogue = {
  ...deviationTableMessages,
  ...deviationCardMessages,
  ...givenCardMessages,
  ...deviationFitMessages,
  ...deviationChartMessages,
};
