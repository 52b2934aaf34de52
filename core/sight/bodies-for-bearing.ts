import { angleFromTo } from '../angle/wrap.js';
import { tanDegrees } from '../angle/trigonometry.js';
import { horizonRates } from '../sky/horizon-rates.js';
import type { BodyInSky } from './sky-survey.js';
import { surveySky } from './sky-survey.js';

/** What speaks for or against a body, worst first. */
export type RankReason =
  | 'too-low'
  | 'too-high'
  | 'high'
  | 'fast'
  | 'hard-to-see'
  | 'near-another'
  | 'steady'
  | 'well-placed';

/** A body fit for a bearing now, or why it is less so; degrees. */
export interface RankedBody {
  readonly body: BodyInSky['body'];
  readonly altitude: number;
  readonly azimuth: number;
  readonly magnitude: number;
  /** Degrees per minute, clockwise positive. */
  readonly azimuthRate: number;
  /** One standard deviation of a bearing of it by tilt, time and place, beside that of the reading. */
  readonly doubt: number;
  readonly reasons: readonly RankReason[];
}

export interface BodiesForBearing {
  /** True altitude of the Sun's centre. */
  readonly sunAltitude: number;
  /** Those in sight, the best first. */
  readonly bodies: readonly RankedBody[];
}

/** Below, haze and refraction hide or displace it; above, the tilt of the circle counts. Common practice, no source. */
const LOW = 5;
const HIGH = 30;
const VERY_HIGH = 60;
/** Half a minute of time moves the bearing a tenth of a degree. */
const FAST = 0.2;
/** A bearing that moves less in a minute needs no watch at all. */
const STEADY = 0.05;
/** Another body so near in bearing and as bright may be taken for it. */
const NEAR = 10;
const AS_BRIGHT = 1;
/** Within so many magnitudes of the faintest that shows, a body must be searched for. */
const FAINT_MARGIN = 1;

/** Usual doubts that differ from body to body: tilt of the circle, a few seconds, a mile; common practice, no source. */
const TILT = 0.5;
const SECONDS = 5;
const MILE = 1 / 60;

function confusable(candidate: BodyInSky, all: readonly BodyInSky[]): boolean {
  // Sun and Moon are taken for nothing else.
  if (candidate.body === 'Sun' || candidate.body === 'Moon') return false;
  return all.some(
    (other) =>
      other.body !== candidate.body &&
      other.visible &&
      Math.abs(angleFromTo(candidate.azimuth, other.azimuth)) < NEAR &&
      Math.abs(candidate.altitude - other.altitude) < NEAR &&
      Math.abs(other.seenMagnitude - candidate.seenMagnitude) < AS_BRIGHT,
  );
}

function rank(candidate: BodyInSky, all: readonly BodyInSky[], latitude: number, faintest: number): RankedBody {
  const { body, altitude, azimuth, magnitude, declination, localHourAngle } = candidate;
  const azimuthRate = horizonRates({ latitude, declination, localHourAngle }).azimuth ?? 0;
  const steep = Math.abs(tanDegrees(altitude));
  const doubt = Math.hypot(TILT * steep, Math.abs(azimuthRate) * (SECONDS / 60), MILE * steep);
  const reasons: RankReason[] = [];
  if (altitude < LOW) reasons.push('too-low');
  if (altitude >= VERY_HIGH) reasons.push('too-high');
  else if (altitude >= HIGH) reasons.push('high');
  if (Math.abs(azimuthRate) > FAST) reasons.push('fast');
  if (body !== 'Sun' && body !== 'Moon' && candidate.seenMagnitude > faintest - FAINT_MARGIN) reasons.push('hard-to-see');
  if (confusable(candidate, all)) reasons.push('near-another');
  if (reasons.length === 0) reasons.push(Math.abs(azimuthRate) < STEADY ? 'steady' : 'well-placed');
  return { body, altitude, azimuth, magnitude, azimuthRate, doubt, reasons };
}

/** What each reason costs, in degrees of doubt that one would take instead; common practice, no source. */
const cost: Record<RankReason, number> = {
  'too-low': 0.5,
  'too-high': 1,
  high: 0.1,
  fast: 0.2,
  'hard-to-see': 0.3,
  'near-another': 0.3,
  steady: 0,
  'well-placed': 0,
};

const badness = ({ doubt, reasons }: RankedBody): number => reasons.reduce((all, reason) => all + cost[reason], doubt);

/**
 * Which body now: those in sight at a place and instant, the best for a bearing first, each
 * with the reasons for its rank. Throws `RangeError` naming a bad argument.
 */
export function bodiesForBearing(latitude: number, longitude: number, instant: Date): BodiesForBearing {
  const { sunAltitude, bodies, faintest } = surveySky(latitude, longitude, instant);
  const seen = bodies.filter(({ visible }) => visible).map((candidate) => rank(candidate, bodies, latitude, faintest));
  return { sunAltitude, bodies: seen.sort((one, other) => badness(one) - badness(other)) };
}
