import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { onGeodesic, POLAR_RATIO, reducedLatitude, stretch } from './geodesic-arc.js';

/** A geodesic by its two ends: bearings at both, degrees, not wrapped, and metres between. */
export interface GeodesicEnds {
  readonly bearing: number;
  readonly bearingAtEnd: number;
  readonly metres: number;
}

/** Rounds that lines not nearly to the antipodes need at most; each leaves a thirtieth of the error or less. */
const ROUNDS = 30;

/**
 * By the triangle on the auxiliary sphere, its angle at the pole corrected until the ellipsoid's
 * fits: Vincenty, Direct and inverse solutions of geodesics, Survey Review 23 (1975). Sines of
 * small differences are taken as such, so that a line of a metre keeps its figures. Null where
 * it does not settle: nearly at the antipodes.
 */
function byTriangle(from: number, to: number, turn: number): GeodesicEnds | null {
  const [start, end] = [reducedLatitude(from), reducedLatitude(to)];
  const rise = { sine: POLAR_RATIO * sinDegrees(to - from), cosine: cosDegrees(from) * cosDegrees(to) + POLAR_RATIO ** 2 * sinDegrees(from) * sinDegrees(to) };
  const size = Math.hypot(rise.sine, rise.cosine);
  let onSphere = turn;
  for (let round = 0; round < ROUNDS && onSphere <= 180; round += 1) {
    // One less the cosine of the angle at the pole.
    const bend = 2 * sinDegrees(onSphere / 2) ** 2;
    const north = rise.sine / size + start.sine * end.cosine * bend;
    const east = end.cosine * sinDegrees(onSphere);
    const width = atan2Degrees(Math.hypot(north, east), rise.cosine / size - start.cosine * end.cosine * bend);
    const bearing = atan2Degrees(east, north);
    const { arc } = onGeodesic(start.sine, start.cosine, sinDegrees(bearing), cosDegrees(bearing));
    const { metres, lag } = stretch(start.cosine * sinDegrees(bearing), arc, width);
    if (Math.abs(turn + lag - onSphere) <= 1e-14 * turn) {
      const bearingAtEnd = atan2Degrees(start.cosine * sinDegrees(onSphere), rise.sine / size - start.cosine * end.sine * bend);
      return { bearing, bearingAtEnd, metres };
    }
    onSphere = turn + lag;
  }
  return null;
}

/**
 * By halving the bearing's range: with the point farther from the equator first and in the
 * south, the longitude reached rises with the bearing there (Karney, section 4), so the
 * search cannot fail.
 */
function byHalving(from: number, to: number, turn: number): GeodesicEnds {
  const swapped = Math.abs(from) < Math.abs(to);
  const [first, second] = swapped ? [to, from] : [from, to];
  const start = reducedLatitude(-Math.abs(first));
  const end = reducedLatitude(first > 0 ? -second : second);
  const along = (bearing: number): GeodesicEnds & { readonly turn: number } => {
    const [sine, cosine] = [sinDegrees(bearing), cosDegrees(bearing)];
    const equatorSine = sine * start.cosine;
    const endCosine = Math.sqrt((cosine * start.cosine) ** 2 + start.sine ** 2 - end.sine ** 2) / end.cosine;
    // A start on the equator counts as just south of it: 0 with the sign of the south.
    const here = onGeodesic(-Math.abs(start.sine), start.cosine, sine, cosine);
    const there = onGeodesic(end.sine, end.cosine, equatorSine / end.cosine, endCosine);
    const { metres, lag } = stretch(equatorSine, here.arc, there.arc - here.arc);
    return { bearing, bearingAtEnd: atan2Degrees(equatorSine / end.cosine, endCosine), metres, turn: there.longitude - here.longitude - lag };
  };
  let [low, high] = [0, 180];
  // Until the two are neighbours among the numbers.
  for (let middle = 90; middle > low && middle < high; middle = (low + high) / 2) {
    if (along(middle).turn < turn) low = middle;
    else high = middle;
  }
  const { bearing, bearingAtEnd, metres } = along(high);
  const mirrored = (angle: number): number => (first > 0 !== swapped ? 180 - angle : angle);
  return swapped ? { bearing: mirrored(bearingAtEnd), bearingAtEnd: mirrored(bearing), metres } : { bearing: mirrored(bearing), bearingAtEnd: mirrored(bearingAtEnd), metres };
}

/**
 * The shortest line on WGS 84 between two latitudes so many degrees of longitude apart, in
 * [0, 180], eastwards.
 */
export function geodesicBetween(from: number, to: number, turn: number): GeodesicEnds {
  return byTriangle(from, to, turn) ?? byHalving(from, to, turn);
}
