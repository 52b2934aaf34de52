import type { Catalogue } from '../../shared/catalogue.js';
import { adviceMessages } from './advice-messages.js';
import { amplitudeMessages } from './amplitude-messages.js';
import { amplitudeStepMessages } from './amplitude-step-messages.js';
import { azimuthMessages } from './azimuth-messages.js';
import { azimuthStepMessages } from './azimuth-step-messages.js';
import { bodyMessages } from './body-messages.js';
import { bodySightMessages } from './body-sight-messages.js';
import { cardMessages } from './card-messages.js';
import { chainStepMessages } from './chain-step-messages.js';
import { conversionMessages } from './conversion-messages.js';
import { correctorMessages } from './corrector-messages.js';
import { curveMessages } from './curve-messages.js';
import { deviationCardMessages } from './deviation-card-messages.js';
import { deviationChartMessages } from './deviation-chart-messages.js';
import { deviationFitMessages } from './deviation-fit-messages.js';
import { deviationTableMessages } from './deviation-table-messages.js';
import { drillMessages } from './drill-messages.js';
import { drillStepMessages } from './drill-step-messages.js';
import { earthFieldMessages } from './earth-field-messages.js';
import { errorStepMessages } from './error-step-messages.js';
import { fieldMapMessages } from './field-map-messages.js';
import { givenMessages } from './given-messages.js';
import { ironMessages } from './iron-messages.js';
import { lmsMessages } from './lms-messages.js';
import { markMessages } from './mark-messages.js';
import { mistakeMessages } from './mistake-messages.js';
import { needleMessages } from './needle-messages.js';
import { panelMessages } from './panel-messages.js';
import { recordMessages } from './record-messages.js';
import { sharedMessages } from './shared-messages.js';
import { shipMessages } from './ship-messages.js';
import { sightAnswerMessages } from './sight-answer-messages.js';
import { sightMessages } from './sight-messages.js';
import { swingMessages } from './swing-messages.js';
import { tableMessages } from './table-messages.js';
import { hintMessages, taskMessages } from './task-messages.js';
import { transitMessages } from './transit-messages.js';
import { transitStepMessages } from './transit-step-messages.js';
import { variationMessages } from './variation-messages.js';
import { zoneMessages } from './zone-messages.js';

/** Simplified Chinese: all that the widgets say, by the keys of the English catalogues. */
export const chinese: Catalogue = {
  ...adviceMessages,
  ...amplitudeMessages,
  ...amplitudeStepMessages,
  ...azimuthMessages,
  ...azimuthStepMessages,
  ...bodyMessages,
  ...bodySightMessages,
  ...cardMessages,
  ...chainStepMessages,
  ...conversionMessages,
  ...correctorMessages,
  ...curveMessages,
  ...deviationCardMessages,
  ...deviationChartMessages,
  ...deviationFitMessages,
  ...deviationTableMessages,
  ...drillMessages,
  ...drillStepMessages,
  ...earthFieldMessages,
  ...errorStepMessages,
  ...fieldMapMessages,
  ...givenMessages,
  ...ironMessages,
  ...lmsMessages,
  ...markMessages,
  ...mistakeMessages,
  ...needleMessages,
  ...panelMessages,
  ...recordMessages,
  ...sharedMessages,
  ...shipMessages,
  ...sightAnswerMessages,
  ...sightMessages,
  ...swingMessages,
  ...tableMessages,
  ...taskMessages,
  ...hintMessages,
  ...transitMessages,
  ...transitStepMessages,
  ...variationMessages,
  ...zoneMessages,
};
