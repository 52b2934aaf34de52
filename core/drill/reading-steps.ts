import { errorSteps } from '../sight/error-steps.js';
import { splitWith } from '../sight/split-error.js';
import type { Step } from '../working/step.js';
import type { AnyReading } from './any-sight.js';

/** The last lines of a working: the error, and the deviation where a variation is given. */
export function readingSteps(trueBearing: number, { compass, compassBearing, variation }: AnyReading): Step[] {
  const source = variation === null ? ({ source: 'none', reason: 'no-date' } as const) : ({ source: 'given', value: variation, sigma: 0, zone: null } as const);
  return errorSteps({ ...splitWith(source, trueBearing, { compass, compassBearing }), trueBearing, compassBearing });
}
