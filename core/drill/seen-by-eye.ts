import { cosDegrees } from '../angle/trigonometry.js';
import { bodyInSky } from '../sky/body-in-sky.js';
import type { BodyName } from '../sky/body.js';
import { skyAt } from '../sky/sky-at.js';
import { dot } from '../sky/vector.js';

/** The Sun this far down, degrees, a planet or star is seen well. */
const DARK = -6;
/** Nearer to the Sun than this, degrees, nobody takes a bearing of the Moon: a thin crescent by night, by day less than a quarter of her face. Common practice, no source. */
const [BY_NIGHT, BY_DAY] = [20, 60];

/** Whether an observer finds a body without looking for it; on the horizon by day not even the Moon. */
export function isSeenByEye(body: BodyName, place: { readonly latitude: number; readonly longitude: number; readonly instant: Date }, onHorizon = false): boolean {
  if (body === 'Sun') return true;
  const { altitude } = bodyInSky('Sun', place);
  if (body !== 'Moon') return altitude < DARK;
  if (onHorizon && altitude > 0) return false;
  const { apparent } = skyAt(place.instant);
  return dot(apparent('Moon').direction, apparent('Sun').direction) < cosDegrees(altitude > 0 ? BY_DAY : BY_NIGHT);
}
