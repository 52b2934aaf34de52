import { angleFromTo } from '../angle/wrap.js';
import { warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';

/** No chart of the open sea differs so far from the model, degrees; a name turned, or another place, does. Common practice, no source. */
const UNLIKE = 3;
/** Where the doubt is greater, so many of its standard deviations. */
const SIGMAS = 3;

/** A variation typed that is far from what the model says at the place: as a rule its name is turned, east for west. */
export function variationSlip(given: number, modelled: number | null | undefined, sigma = 0): Caution[] {
  if (modelled === null || modelled === undefined || Math.abs(angleFromTo(modelled, given)) <= Math.max(UNLIKE, SIGMAS * sigma)) return [];
  return [warning('variation-unlike-model', { given: quantity(given, 'error'), modelled: quantity(modelled, 'error') })];
}
