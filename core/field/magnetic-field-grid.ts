import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkRange } from '../angle/check-number.js';
import { DEGREE } from './field-coefficients.js';
import { geocentric } from './geocentric.js';
import { timedModel } from './timed-model.js';
import { fillLegendre, LEGENDRE_TABLE } from './legendre.js';
import type { MagneticModelName } from './magnetic-models.js';
import { ORDER_SUMS, orderSums } from './order-sums.js';
import { fillColumns } from './parallel-columns.js';

export interface MagneticFieldGridRequest {
  /** Degrees between neighbours, 0.1 to 90, going into 180 a whole number of times. */
  readonly step: number;
  readonly instant: Date;
  /** The newest model that holds for the instant unless given. */
  readonly model?: MagneticModelName;
  /** Height above the ellipsoid, km, -1 to 850; 0 unless given. */
  readonly heightKm?: number;
}

/**
 * The field of the world at one date. Each list of values goes row by row from the
 * north, each row from longitude -180° eastwards: the value at `latitudes[row]` and
 * `longitudes[column]` stands at `row * longitudes.length + column`.
 */
export interface MagneticFieldGrid {
  readonly step: number;
  readonly model: MagneticModelName;
  /** 90 to -90, both included. */
  readonly latitudes: Float64Array;
  /** -180 to 180 less the step: the seam is not repeated. */
  readonly longitudes: Float64Array;
  /** nT. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly h: Float64Array;
  readonly f: Float64Array;
  /** Degrees, (-180, 180]; 0 where h is exactly 0 and there is none. */
  readonly variation: Float64Array;
  /** The same list as `variation`. */
  readonly declination: Float64Array;
  /** Degrees, [-90, 90]. */
  readonly inclination: Float64Array;
}

function wholeParts(step: number): number {
  checkRange('step', step, 0.1, 90);
  const parts = Math.round(180 / step);
  if (Math.abs(parts * step - 180) > 1e-9) throw new RangeError(`step: ${step} does not go into 180 a whole number of times`);
  return parts;
}

/** Fills h, f, variation and inclination from x, y and z. */
function fillElements(grid: MagneticFieldGrid): void {
  const { x, y, z, h, f, variation, inclination } = grid;
  for (let index = 0; index < x.length; index++) {
    const north = x[index] as number;
    const east = y[index] as number;
    const down = z[index] as number;
    const level = Math.sqrt(north * north + east * east);
    const direction = atan2Degrees(east, north);
    h[index] = level;
    f[index] = Math.sqrt(level * level + down * down);
    variation[index] = direction === -180 ? 180 : direction;
    inclination[index] = atan2Degrees(down, level);
  }
}

/**
 * The elements of the field over the whole world, some thirty times faster than place by
 * place: a parallel shares its Legendre functions. Throws `RangeError` naming `step`,
 * `heightKm`, `instant` or `model`.
 */
export function magneticFieldGrid({ step, instant, model, heightKm = 0 }: MagneticFieldGridRequest): MagneticFieldGrid {
  const parts = wholeParts(step);
  checkRange('heightKm', heightKm, -1, 850);
  const { main, name } = timedModel(instant, model);
  const columns = 2 * parts;
  const size = (parts + 1) * columns;
  const variation = new Float64Array(size);
  const grid: MagneticFieldGrid = {
    step,
    model: name,
    latitudes: Float64Array.from({ length: parts + 1 }, (_, row) => 90 - (180 * row) / parts),
    longitudes: Float64Array.from({ length: columns }, (_, column) => (180 * column) / parts - 180),
    x: new Float64Array(size),
    y: new Float64Array(size),
    z: new Float64Array(size),
    h: new Float64Array(size),
    f: new Float64Array(size),
    variation,
    declination: variation,
    inclination: new Float64Array(size),
  };
  const turns = turnsOf(parts);
  const table = new Float64Array(LEGENDRE_TABLE);
  const sums = new Float64Array(ORDER_SUMS);
  for (let row = 0; row <= parts; row++) {
    const place = geocentric(grid.latitudes[row] as number, heightKm);
    fillLegendre(place, table);
    orderSums(main, table, place.cosLatitude, sums);
    fillColumns(sums, turns, place, grid, row * columns, columns);
  }
  fillElements(grid);
  return grid;
}

/** cos mλ and sin mλ in turn for the columns from λ = 0 to 90°. */
function turnsOf(parts: number): Float64Array {
  const width = DEGREE + 1;
  const quarter = Math.floor(parts / 2);
  const turns = new Float64Array(2 * width * (quarter + 1));
  for (let column = 0, at = 0; column <= quarter; column++) {
    for (let m = 0; m < width; m++) {
      const angle = (m * 180 * column) / parts;
      turns[at++] = cosDegrees(angle);
      turns[at++] = sinDegrees(angle);
    }
  }
  return turns;
}
