import { cosDegrees } from '../angle/trigonometry.js';
import type { BodyName } from './body.js';
import type { Sky } from './sky-at.js';
import { dot } from './vector.js';

/** Whether a body stands nearer to the Sun than so many degrees, below 90. */
export const isBesideSun = (sky: Sky, body: BodyName, limit: number): boolean =>
  dot(sky.apparent(body).direction, sky.apparent('Sun').direction) > cosDegrees(limit);
