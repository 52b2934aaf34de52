import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { bearingOfPoint } from './compass-points.js';
import { degreesAsMark } from './degrees-as-mark.js';
import { parseSexagesimal } from './parse-sexagesimal.js';
import { wrap360 } from './wrap.js';

/** Reads `N 45 E`, counted from north or south towards east or west, at most 90°. */
function parseQuadrantal(plain: string): Reading<number> | null {
  const match = /^([NS]) ?([^A-Z ][^A-Z]*)([EW])$/.exec(plain);
  if (!match) return null;
  const size = parseSexagesimal((match[2] ?? '').trim());
  if (!size.ok) return size;
  if (size.value > 90) return refused('out-of-range');
  const fromNorth = match[1] === 'N' ? size.value : 180 - size.value;
  return understood(wrap360(match[3] === 'E' ? fromNorth : -fromNorth));
}

/** `NO`, `N 45 O`: east in one language, west in another. */
function isNamedWithO(plain: string): boolean {
  return plain.includes('O') && /^[NESWO\d.,°'": -]+$/.test(plain);
}

/**
 * Reads a bearing or heading: `045`, `113.2°`, `113°12′`, `N 45 E`, `ENE`; an M, C, G or T
 * behind it is allowed and says nothing. Degrees [0, 360); 360 is 0.
 */
export function parseBearing(text: string): Reading<number> {
  const plain = degreesAsMark(normalise(text));
  if (plain === '') return refused('empty');
  const point = bearingOfPoint(plain);
  if (point !== null) return understood(point);
  const quadrantal = parseQuadrantal(plain);
  if (quadrantal) return quadrantal;
  if (isNamedWithO(plain)) return refused('letter-o');
  const figures = plain.replace(/ ?[TMCG]$/, '');
  if (figures === '') return refused('not-understood');
  const reading = parseSexagesimal(figures);
  if (!reading.ok) return reading;
  return reading.value > 360 ? refused('out-of-range') : understood(wrap360(reading.value));
}
