import type { Caution } from '../working/caution.js';
import { note, warning } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { ChartRose } from './charted-variation.js';
import type { FieldPlace } from './check-place.js';
import type { MagneticField } from './magnetic-field.js';
import type { ModelAgainstRose } from './model-against-rose.js';

/** Annual changes are forecasts; after ten years they are seldom true (common practice, no source). */
const OLD_ROSE = 10;
/** Two standard deviations: beyond them model and chart do not say the same. */
const BEYOND_DOUBT = 2;
/** So near the variation with its letter turned, degrees, that the letter is suspected. */
const TURNED = 1;

/** What is odd about the place: too little force for a compass, or a pole. */
export function placeCautions(place: FieldPlace, field: MagneticField): Caution[] {
  const cautions: Caution[] = [];
  if (field.zone === 'blackout') cautions.push(warning('blackout-zone'));
  if (field.zone === 'caution') cautions.push(warning('caution-zone'));
  if (field.variation === null) cautions.push(warning('dip-pole'));
  if (Math.abs(place.latitude) === 90) {
    cautions.push(note('geographic-pole', { longitude: quantity(place.longitude, 'longitude') }));
  }
  return cautions;
}

const isOld = (years: number): boolean => years > OLD_ROSE;

/** What is odd about a rose by itself. */
export function roseCautions(rose: ChartRose, years: number, charted: number): Caution[] {
  const cautions: Caution[] = [];
  if (years < 0) cautions.push(note('rose-ahead', { years: quantity(-years, 'years') }));
  else if (isOld(years)) cautions.push(note('rose-old', { years: quantity(years, 'years') }));
  // Across south the letter turns too, with nothing passed; and before the rose it has yet to pass.
  if (years > 0 && rose.variation * charted < 0 && Math.abs(rose.variation - charted) < 180) cautions.push(note('rose-through-zero', { was: quantity(rose.variation, 'error'), is: quantity(charted, 'error') }));
  return cautions;
}

/**
 * What to do about the difference between model and chart: one of five. The chart was measured
 * and prevails, but not by an annual change added up for longer than one holds (common practice).
 */
export function differenceCautions({ charted, modelled, difference, uncertainty, years }: ModelAgainstRose): Caution[] {
  if (modelled === null || difference === null || uncertainty === null) return [];
  const values = { difference: quantity(Math.abs(difference), 'angle'), doubt: quantity(uncertainty, 'angle') };
  if (Math.abs(difference) <= BEYOND_DOUBT * uncertainty) return [note('rose-agrees', values)];
  const turned = Math.abs(charted + modelled) <= TURNED && Math.abs(charted) > TURNED;
  if (turned) return [warning('rose-turned', { charted: quantity(charted, 'error') })];
  return isOld(years) ? [warning('rose-outdated', { ...values, years: quantity(years, 'years') })] : [warning('rose-differs', values)];
}
