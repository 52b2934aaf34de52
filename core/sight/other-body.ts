import { angleFromTo } from '../angle/wrap.js';
import type { BodyName } from '../sky/body.js';
import { surveySky } from './sky-survey.js';

/** A compass bearing that would point at another body with so small a miss is taken for it, degrees. */
const FIT = 2;
/** Fainter stars are not taken for what was looked for; common practice, no source. */
const BRIGHT = 1.6;

/**
 * Another bright body in sight that stands where the bearing points: the brightest within
 * two degrees; null where there is none.
 */
export function otherBodyAt(
  bearing: number,
  except: BodyName | null,
  place: { readonly latitude: number; readonly longitude: number; readonly instant: Date },
): BodyName | null {
  const { bodies } = surveySky(place.latitude, place.longitude, place.instant);
  let found: { body: BodyName; seenMagnitude: number } | null = null;
  for (const candidate of bodies) {
    if (candidate.body === except || !candidate.visible || candidate.magnitude > BRIGHT) continue;
    if (Math.abs(angleFromTo(bearing, candidate.azimuth)) > FIT) continue;
    if (!found || candidate.seenMagnitude < found.seenMagnitude) found = candidate;
  }
  return found?.body ?? null;
}
