/** P and Q in the unit of the field, c and f pure numbers; null: not determined. */
export interface SemicircularIron {
  readonly P: number | null;
  readonly c: number | null;
  readonly Q: number | null;
  readonly f: number | null;
}

/** One place's semicircular coefficient: 𝔅 (or ℭ), the field there, and one standard deviation of it. */
export interface SemicircularReading {
  readonly value: number;
  readonly h: number;
  readonly z: number;
  readonly sigma: number;
}

/** Variances and covariance of the two parts of a line. */
export interface LineVariance {
  readonly permanent: number;
  readonly induced: number;
  readonly both: number;
}

/** Permanent and induced part of one semicircular coefficient, over λ. */
export interface SemicircularLine {
  /** P/λ or Q/λ, in the unit of the field; null where the readings do not tell. */
  readonly permanent: number | null;
  /** c/λ or f/λ, pure number; null where the readings do not tell. */
  readonly induced: number | null;
  /** From the sigmas, or from the misfit where they are not known; null where that tells nothing either. */
  readonly variance: LineVariance | null;
  /** The variance that readings of standard deviation 1 would give: how much the places amplify noise. */
  readonly amplification: LineVariance | null;
}

/** Dip below this tangent: c Z is then less than 0.01° of deviation for any ship's c. */
export const NO_INDUCTION = 1e-3;
/** Vertical forces alike to this part of the field do not tell permanent from induced. */
const ALIKE = 1e-6;

const UNTOLD: SemicircularLine = { permanent: null, induced: null, variance: null, amplification: null };

/**
 * The straight line H𝔅 = P/λ + (c/λ) Z through several places, by weighted least squares;
 * a reading of sigma s stands on it with s × H. Two different vertical forces are needed; at
 * the magnetic equator one reading gives the permanent part, since nothing is induced there.
 * `sigmasKnown` false: the sigmas say only how the readings compare, not how good they are.
 */
export function fitSemicircularLine(
  readings: readonly SemicircularReading[],
  sigmasKnown: boolean,
): SemicircularLine {
  const points = readings.map(({ value, h, z, sigma }) => ({ y: value * h, z, weight: (sigma * h) ** -2 }));
  const sum = (of: (point: { y: number; z: number }) => number): number =>
    points.reduce((total, point) => total + point.weight * of(point), 0);
  const weight = sum(() => 1);
  // Taken from the mean, the sums keep their figures where the places are nearly alike.
  const z = sum((point) => point.z) / weight;
  const y = sum((point) => point.y) / weight;
  const spread = sum((point) => (point.z - z) ** 2);

  const strongest = Math.max(...readings.map((reading) => Math.hypot(reading.h, reading.z)));
  const told = Math.sqrt(spread / weight) > ALIKE * strongest;
  const onEquator = readings.every((reading) => Math.abs(reading.z) <= NO_INDUCTION * reading.h);
  if (readings.length === 0 || (!told && !onEquator)) return UNTOLD;

  const slope = told ? sum((point) => (point.z - z) * (point.y - y)) / spread : 0;
  const permanent = y - slope * z;
  const raw: LineVariance = told
    ? { permanent: 1 / weight + z ** 2 / spread, induced: 1 / spread, both: -z / spread }
    : { permanent: 1 / weight, induced: 0, both: 0 };
  const spare = readings.length - (told ? 2 : 1);
  const misfit = sum((point) => (point.y - permanent - slope * point.z) ** 2);
  const meanSquare = readings.reduce((total, { sigma }) => total + sigma ** 2, 0) / readings.length;
  const variance = sigmasKnown ? raw : spare > 0 ? scaled(raw, misfit / spare) : null;
  const amplification = scaled(raw, 1 / meanSquare);
  // Readings absurd enough to overrun all numbers tell nothing.
  const numbers = [permanent, slope, ...Object.values(variance ?? {}), ...Object.values(amplification)];
  if (!numbers.every(Number.isFinite)) return UNTOLD;
  return { permanent, induced: told ? slope : null, variance, amplification };
}

function scaled(variance: LineVariance, by: number): LineVariance {
  return { permanent: variance.permanent * by, induced: variance.induced * by, both: variance.both * by };
}
