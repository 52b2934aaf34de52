import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { seriesAt } from './series.js';
import type { OrbitSeries } from './series.js';
import type { Vector } from './vector.js';

/** The point at a longitude, latitude and distance. */
export function pointAt(longitude: number, latitude: number, distance: number): Vector {
  const flat = distance * cosDegrees(latitude);
  return [flat * cosDegrees(longitude), flat * sinDegrees(longitude), distance * sinDegrees(latitude)];
}

/** Where a body of an orbit is at a time in centuries since J2000.0, in the ecliptic of its series, astronomical units. */
export function orbitPlace({ meanMotion, coordinates: [longitude, latitude, distance] }: OrbitSeries, century: number): Vector {
  return pointAt(seriesAt(longitude, meanMotion, century), seriesAt(latitude, meanMotion, century), seriesAt(distance, meanMotion, century));
}
