import { amplitudeStepMessages } from '../shared/amplitude-step-messages.js';
import { azimuthStepMessages } from '../shared/azimuth-step-messages.js';
import type { Catalogue } from '../shared/catalogue.js';
import { chainStepMessages } from '../shared/chain-step-messages.js';
import { errorStepMessages } from '../shared/error-step-messages.js';
import { transitStepMessages } from '../shared/transit-step-messages.js';

/** The lines of the workings. */
export const drillStepMessages: Catalogue = {
  ...azimuthStepMessages,
  ...amplitudeStepMessages,
  ...transitStepMessages,
  ...chainStepMessages,
  ...errorStepMessages,
  'step.drill.reciprocal': 'The same line looked at from seaward',
  'step.drill.chart-variation': 'The rose’s value and the annual change for the years gone by, east positive',
  'step.drill.coefficient-A': 'A: the mean of all eight',
  'step.drill.coefficient-B': 'B: half of east less west',
  'step.drill.coefficient-C': 'C: half of north less south',
  'step.drill.coefficient-D': 'D: a quarter, the intercardinals by their signs',
  'step.drill.coefficient-E': 'E: a quarter, the cardinals by their signs',
  'step.drill.deviation-from-coefficients': 'Deviation: A + B sin + C cos + D sin 2 + E cos 2 of the head by compass',
  'step.drill.permanent': 'Permanent magnetism acts as one over H',
  'step.drill.induced': 'Vertical soft iron acts as Z over H',
  'step.drill.slope': 'The induced part: how H times B changes with Z',
  'step.drill.third-place': 'At the third place: H times B of the first, and the change of Z',
};
