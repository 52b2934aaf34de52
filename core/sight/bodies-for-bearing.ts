import { angleFromTo } from '../angle/wrap.js';
import { acosDegrees, cosDegrees, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { horizonRates } from '../sky/horizon-rates.js';
import type { BodyInSky } from './sky-survey.js';
import { surveySky } from './sky-survey.js';

/** What speaks against a body, or where nothing does what speaks for it. */
export type RankReason =
  | 'too-low'
  | 'too-high'
  | 'high'
  | 'fast'
  | 'hard-to-see'
  | 'near-another'
  | 'in-glare'
  | 'bright'
  | 'steady'
  | 'well-placed';

/** A body fit for a bearing now, or why it is less so; degrees. */
export interface RankedBody {
  readonly body: BodyInSky['body'];
  readonly altitude: number;
  readonly azimuth: number;
  readonly magnitude: number;
  /** As dimmed by the air at that altitude. */
  readonly seenMagnitude: number;
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

/** Within these of Sun or Moon a body is looked for in their glare, degrees; the Moon's is that of her half and more. */
const GLARE = { Sun: 15, Moon: 8, moonMagnitude: -9 };
/** What shows as brightly as this is found at once and stays in sight over the compass. */
const BRIGHT = 0.5;

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

/** Angle in the sky between two bodies, degrees. */
function apart(one: BodyInSky, other: BodyInSky): number {
  const turn = cosDegrees(angleFromTo(one.azimuth, other.azimuth));
  return acosDegrees(sinDegrees(one.altitude) * sinDegrees(other.altitude) + cosDegrees(one.altitude) * cosDegrees(other.altitude) * turn);
}

/** Whether Sun or Moon above the horizon blind the eye that looks for it. */
function inGlare(candidate: BodyInSky, all: readonly BodyInSky[]): boolean {
  if (candidate.body === 'Sun' || candidate.body === 'Moon') return false;
  return all.some((other) => {
    if (other.body === 'Sun') return apart(candidate, other) < GLARE.Sun;
    return other.body === 'Moon' && other.magnitude < GLARE.moonMagnitude && apart(candidate, other) < GLARE.Moon;
  });
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
  if (inGlare(candidate, all)) reasons.push('in-glare');
  if (reasons.length === 0) {
    if (candidate.seenMagnitude < BRIGHT) reasons.push('bright');
    reasons.push(Math.abs(azimuthRate) < STEADY ? 'steady' : 'well-placed');
  }
  return { body, altitude, azimuth, magnitude, seenMagnitude: candidate.seenMagnitude, azimuthRate, doubt, reasons };
}

/** What each reason costs, in degrees of doubt that one would take instead; common practice, no source. */
const cost: Record<RankReason, number> = {
  'too-low': 0.5,
  'too-high': 1,
  high: 0.1,
  fast: 0.2,
  'hard-to-see': 0.3,
  'near-another': 0.3,
  'in-glare': 0.3,
  bright: 0,
  steady: 0,
  'well-placed': 0,
};

/** A magnitude fainter is worth so many degrees of doubt: a dim star is hard to hold over the compass; common practice, no source. */
const PER_MAGNITUDE = 0.05;

const badness = ({ doubt, reasons, seenMagnitude }: RankedBody): number =>
  reasons.reduce((all, reason) => all + cost[reason], doubt + PER_MAGNITUDE * Math.max(0, seenMagnitude - BRIGHT));

/**
 * Which body now: those in sight at a place and instant, the best for a bearing first, each
 * with the reasons for its rank. Latitude in [-90, 90], longitude in [-360, 360], degrees, north and
 * east positive. None is named at a pole, where no bearing tells one from another.
 * Throws `RangeError` naming a bad argument, `instant` outside 1900-01-01 to 2100-01-01 among them.
 */
export function bodiesForBearing(latitude: number, longitude: number, instant: Date): BodiesForBearing {
  const { sunAltitude, bodies, faintest } = surveySky(latitude, longitude, instant);
  const seen = bodies.filter(({ visible }) => visible).map((candidate) => rank(candidate, bodies, latitude, faintest));
  return { sunAltitude, bodies: seen.sort((one, other) => badness(one) - badness(other)) };
}
