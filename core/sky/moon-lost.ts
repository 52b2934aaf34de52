import { cosDegrees } from '../angle/trigonometry.js';
import type { Sky } from './sky-at.js';
import { dot } from './vector.js';

/** Nearer to the Sun than this, degrees, no eye finds the Moon: Danjon's limit, as given by Sultan, The Observatory 127 (2007), whose own is 7.5°. */
const LIMIT = 7;

/** Whether the Moon is so new, or so old, that her crescent cannot be seen. */
export function isMoonLost(sky: Sky): boolean {
  return dot(sky.apparent('Moon').direction, sky.apparent('Sun').direction) > cosDegrees(LIMIT);
}
