import { checkEvent } from './check-event.js';
import { checkFinite } from './check-number.js';
import { fixed, roundTo } from './format-angle.js';
import { wrap360 } from './wrap.js';

/**
 * A bearing, any finite degrees, named from north or south: 122.6 is `S 57.4° E`, 0 is `N`, 90
 * is `E`. Throws `RangeError` unless it is finite.
 */
export function formatQuadrantal(degrees: number, decimals = 1, mark = '.'): string {
  const bearing = wrap360(roundTo(wrap360(degrees), decimals));
  if (bearing % 90 === 0) return 'NESW'[bearing / 90] ?? 'N';
  const north = bearing < 90 || bearing > 270;
  const east = bearing < 180;
  const size = north ? (east ? bearing : 360 - bearing) : Math.abs(180 - bearing);
  return `${north ? 'N' : 'S'} ${fixed(size, decimals, mark)}° ${east ? 'E' : 'W'}`;
}

/**
 * An amplitude named from east or west: the prefix is E for a rising body and W for a
 * setting one, the suffix N or S as the body stands from it: `E 32.6° S`. Degrees, north
 * positive. Throws `RangeError` unless it is finite and the event one of the two.
 */
export function formatAmplitude(amplitude: number, event: 'rising' | 'setting', decimals = 1, mark = '.'): string {
  checkFinite('amplitude', amplitude);
  checkEvent(event);
  const rounded = roundTo(amplitude, decimals);
  const letter = rounded === 0 ? '' : rounded > 0 ? ' N' : ' S';
  return `${event === 'rising' ? 'E' : 'W'} ${fixed(Math.abs(rounded), decimals, mark)}°${letter}`;
}
