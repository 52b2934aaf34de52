import { checkRange } from '../angle/check-number.js';
import { wrap360 } from '../angle/wrap.js';
import { solveTriangle } from '../sky/altitude-azimuth.js';
import { bodyNames } from '../sky/body.js';
import type { BodyName } from '../sky/body.js';
import { checkSkyInstant } from '../sky/check-sky-instant.js';
import { magnitudeIn } from '../sky/magnitude.js';
import { isMoonLost } from '../sky/moon-lost.js';
import { skyAt } from '../sky/sky-at.js';
import { faintestSeen, seenMagnitude } from './seen-magnitude.js';

/** A body above the horizon; degrees. */
export interface BodyInSky {
  readonly body: BodyName;
  readonly declination: number;
  readonly localHourAngle: number;
  /** True geocentric altitude of the centre, and the bearing. */
  readonly altitude: number;
  readonly azimuth: number;
  readonly magnitude: number;
  /** Magnitude as dimmed by the air at that altitude. */
  readonly seenMagnitude: number;
  /** Whether an eye can find it in this light, clouds aside. */
  readonly visible: boolean;
}

export interface SkySurvey {
  /** True altitude of the Sun's centre, degrees. */
  readonly sunAltitude: number;
  /** The faintest magnitude an eye can find in this light; the Moon aside. */
  readonly faintest: number;
  readonly bodies: readonly BodyInSky[];
}

/** By day only a broad Moon shows, however bright a point of light would be; from memory, no source. */
const MOON_BY_DAY = -8.5;

/**
 * All bodies of the almanac above the horizon at a place and instant, in the almanac's
 * order; one straight overhead has no bearing and is left out, and there is none at a pole.
 * Throws `RangeError` naming a bad argument.
 */
export function surveySky(latitude: number, longitude: number, instant: Date): SkySurvey {
  checkRange('latitude', latitude, -90, 90);
  checkRange('longitude', longitude, -360, 360);
  checkSkyInstant('instant', instant);
  const sky = skyAt(instant);
  const placed = bodyNames.map((body) => {
    const { gha, declination } = sky.position(body);
    const localHourAngle = wrap360(gha + longitude);
    return { body, declination, localHourAngle, ...solveTriangle({ latitude, declination, localHourAngle }) };
  });
  const sunAltitude = placed[0]?.altitude ?? 0;
  const limit = faintestSeen(sunAltitude);
  const bodies: BodyInSky[] = [];
  for (const place of placed) {
    const { body, altitude, azimuth } = place;
    if (altitude <= 0 || azimuth === null) continue;
    const magnitude = magnitudeIn(sky, body);
    const seen = seenMagnitude(magnitude, altitude);
    const shows = body === 'Moon' && sunAltitude > 0 ? magnitude <= MOON_BY_DAY : seen <= limit;
    const visible = shows && !(body === 'Moon' && isMoonLost(sky));
    bodies.push({ ...place, azimuth, magnitude, seenMagnitude: seen, visible });
  }
  return { sunAltitude, faintest: limit, bodies };
}
