import { roundTo } from '../../core/angle/format-angle.js';
import { wrap180, wrap360 } from '../../core/angle/wrap.js';
import type { Translate } from './catalogue.js';
import { formatFixed } from './figures.js';

/** An error as it is said: `3.2 degrees west`. */
export function spokenError(degrees: number, t: Translate, decimals = 1): string {
  const rounded = wrap180(roundTo(degrees, decimals));
  const size = t('spoken.degrees', { number: formatFixed(Math.abs(rounded), decimals) });
  if (rounded === 0) return size;
  return `${size} ${t(rounded > 0 ? 'spoken.east' : 'spoken.west')}`;
}

/** A bearing as it is said: `045.5 degrees`. */
export function spokenBearing(degrees: number, t: Translate, decimals = 1): string {
  const rounded = wrap360(roundTo(wrap360(degrees), decimals));
  return t('spoken.degrees', { number: formatFixed(rounded, decimals, 3) });
}
