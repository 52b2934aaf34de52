import { cosDegrees, tanDegrees } from '../angle/trigonometry.js';
import { angleFromTo, wrap360 } from '../angle/wrap.js';
import { isBesideSun } from '../sky/beside-sun.js';
import { bodyInSky } from '../sky/body-in-sky.js';
import { checkBody } from '../sky/body.js';
import { HORIZON_REFRACTION } from '../sky/refraction.js';
import { skyAt } from '../sky/sky-at.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AzimuthBearing, AzimuthLook } from './azimuth-bearing.js';
import { explanations } from './azimuth-explanations.js';
import { errorCautions } from './error-cautions.js';
import { expectedError } from './expected-error.js';
import { lightCautions } from './light-cautions.js';
import { ABSURD_DEVIATION } from './odd-errors.js';
import type { SplitError } from './split-error.js';

/** What is known of a sight when its cautions are looked for. */
export interface Judged extends AzimuthBearing, SplitError {
  readonly compassBearing: number;
  readonly tilt: number;
  readonly doubtOfDeviation: number;
}

/** Keep below about 30° (common practice; some forms print it); from 60° on a bearing is no check. */
const HIGH = { note: 30, warning: 60, zenith: 85 };
/** Half a minute of time moves the bearing a tenth of a degree. */
const FAST = 0.2;
const VERY_FAST = 1;
/** Dip from the bridge of a large ship, degrees: what is a little below the horizon may be in sight. */
const DIP = 0.2;
/** An altitude by the sextant this far from the one by time tells of a wrong body or time, degrees. */
const ALTITUDE_MISS = 1;

/** Whether a body can be seen at its altitude, and is not too high for a bearing; `tilt` of the azimuth circle in degrees. */
export function altitudeCautions({ altitude, horizontalParallax, semidiameter, tilt }: Pick<Judged, 'altitude' | 'horizontalParallax' | 'semidiameter' | 'tilt'>): Caution[] {
  const values = { altitude: quantity(altitude, 'angle') };
  const upperLimb = altitude - horizontalParallax * cosDegrees(altitude) + semidiameter + HORIZON_REFRACTION + DIP;
  if (upperLimb < 0) return [warning('below-horizon', values)];
  if (altitude >= HIGH.zenith) return [warning('near-zenith', values)];
  if (altitude < HIGH.note) return [];
  const tilted = { ...values, tilt: quantity(tilt, 'angle'), effect: quantity(tilt * tanDegrees(altitude), 'angle') };
  return [altitude >= HIGH.warning ? warning('altitude-very-high', tilted) : note('altitude-high', tilted)];
}

function rateCautions({ by, azimuthRate }: Judged): Caution[] {
  const rate = Math.abs(azimuthRate);
  if (by === 'altitude' || rate <= FAST) return [];
  const values = { rate: quantity(rate, 'perMinute'), half: quantity(rate / 2, 'angle') };
  return [rate > VERY_FAST ? warning('bearing-very-fast', values) : note('bearing-fast', values)];
}

/** Where body and time are given besides an altitude, the two must agree. */
function altitudeByTimeCautions({ source, latitude, longitude, instant }: AzimuthLook, { altitude }: Judged): Caution[] {
  if (source.by !== 'altitude' || source.body === null || instant === null) return [];
  const { altitude: byTime } = bodyInSky(source.body, { latitude, longitude, instant });
  if (Math.abs(byTime - altitude) <= ALTITUDE_MISS) return [];
  return [warning('altitude-not-by-time', { altitude: quantity(altitude, 'angle'), byTime: quantity(byTime, 'angle') })];
}

/** Nearer to the Sun than this, degrees, no eye finds a star or planet; Venus in twilight alone. Common practice, no source. */
const GLARE = 10;

/** Whether the body named could be seen in the light of the time named. */
function lightOf({ source, latitude, longitude, instant }: AzimuthLook): Caution[] {
  if (!('body' in source) || !source.body || !instant) return [];
  const body = checkBody(source.body);
  const place = { latitude, longitude, instant };
  const isLost = !/Sun|Moon/.test(body) && isBesideSun(skyAt(instant), body, GLARE) && (body !== 'Venus' || bodyInSky('Sun', place).altitude > 0);
  return isLost ? [warning('lost-beside-sun', { body })] : lightCautions(body, place);
}

/** An error put right by a slip has to come so near, as a share of what is odd: half of it a sound compass has by itself. Common practice, no source. */
const BY_ITSELF = 0.5;

/** Everything odd about an azimuth, by code. */
export function azimuthCautions(look: AzimuthLook, judged: Judged): Caution[] {
  const expected = expectedError(judged);
  const miss = expected === null ? 0 : Math.abs(angleFromTo(expected.error, judged.error));
  const ofError = errorCautions(judged, judged.doubtOfDeviation);
  const { variation } = judged;
  // Without a date the years of the models are not the reason.
  const dated = variation.source === 'none' && variation.reason === 'no-date' ? ofError.filter(({ code }) => code !== 'variation-missing') : ofError;
  if (dated.length < ofError.length) dated.push(note('variation-needs-date'));
  const rest = [...altitudeCautions(judged), ...lightOf(look), ...altitudeByTimeCautions(look, judged), ...dated, ...rateCautions(judged)];
  const slips = expected !== null && miss > expected.odd ? explanations(look, judged, wrap360(judged.compassBearing + expected.error), BY_ITSELF * expected.odd) : [];
  return leadBy(slips, rest, miss > ABSURD_DEVIATION);
}

/** What no compass is to blame for: then a slip was made. */
const proofs = ['altitude-not-by-time', 'below-horizon', 'lost-beside-sun', 'lost-in-daylight', 'other-side'];
/** What is so whatever slip was made. */
const besides = ['blackout-zone', 'caution-zone', 'variation-missing', 'variation-unlike-model'];

/**
 * One leading warning, and what follows of it as notes: the slip that explains a look which cannot have been
 * so, or an error beyond belief; else that look; else what is odd about the error, and as notes what would explain it.
 */
function leadBy(slips: readonly Caution[], rest: readonly Caution[], beyondBelief: boolean): Caution[] {
  const all = [...slips, ...rest];
  const proved = rest.filter(({ code }) => proofs.includes(code));
  const explained = beyondBelief || proved.length > 0 ? slips : [];
  const leading = [explained, proved, rest.some(({ level }) => level === 'warning') ? rest : all].find(({ length }) => length > 0);
  return all.map((caution) => (leading?.includes(caution) || besides.includes(caution.code) ? caution : { ...caution, level: 'note' }));
}
