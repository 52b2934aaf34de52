import type { GeocentricPlace } from './geocentric.js';
import { ORDER_SUMS } from './order-sums.js';

interface VectorLists {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/**
 * Works the order sums of one parallel out at all its columns, writing x, y and z from
 * place `start` on. Four columns share each product: going from λ to -λ turns the sign
 * of the sines, going to λ + 180° that of the odd orders.
 *
 * `turns` holds cos mλ and sin mλ for m = 0, 1, … and the columns from λ = 0 to 90°;
 * column 0 is at λ = -180° and the number of columns is even.
 */
export function fillColumns(
  sums: Float64Array,
  turns: Float64Array,
  place: GeocentricPlace,
  { x, y, z }: VectorLists,
  start: number,
  columns: number,
): void {
  const { sinTilt, cosTilt } = place;
  const width = ORDER_SUMS / 3;
  const half = columns / 2;

  const put = (column: number, north: number, east: number, down: number): void => {
    const at = start + (column === columns ? 0 : column);
    x[at] = north * cosTilt - down * sinTilt;
    y[at] = east;
    z[at] = north * sinTilt + down * cosTilt;
  };

  for (let k = 0, turn = 0; turn < turns.length; k++) {
    let northCosEven = 0, northSinEven = 0, eastCosEven = 0, eastSinEven = 0, downCosEven = 0, downSinEven = 0;
    let northCosOdd = 0, northSinOdd = 0, eastCosOdd = 0, eastSinOdd = 0, downCosOdd = 0, downSinOdd = 0;
    const end = turn + width;
    for (let at = 0; turn < end; ) {
      const c = turns[turn] as number;
      const s = turns[turn + 1] as number;
      northCosEven += c * (sums[at] as number);
      northSinEven += s * (sums[at + 1] as number);
      eastCosEven += c * (sums[at + 2] as number);
      eastSinEven += s * (sums[at + 3] as number);
      downCosEven += c * (sums[at + 4] as number);
      downSinEven += s * (sums[at + 5] as number);
      turn += 2;
      at += 6;
      if (turn === end) break;
      const cOdd = turns[turn] as number;
      const sOdd = turns[turn + 1] as number;
      northCosOdd += cOdd * (sums[at] as number);
      northSinOdd += sOdd * (sums[at + 1] as number);
      eastCosOdd += cOdd * (sums[at + 2] as number);
      eastSinOdd += sOdd * (sums[at + 3] as number);
      downCosOdd += cOdd * (sums[at + 4] as number);
      downSinOdd += sOdd * (sums[at + 5] as number);
      turn += 2;
      at += 6;
    }
    const northCos = northCosEven + northCosOdd, northSin = northSinEven + northSinOdd;
    const eastCos = eastCosEven + eastCosOdd, eastSin = eastSinEven + eastSinOdd;
    const downCos = downCosEven + downCosOdd, downSin = downSinEven + downSinOdd;
    put(half + k, northCos + northSin, eastCos + eastSin, downCos + downSin);
    put(half - k, northCos - northSin, eastCos - eastSin, downCos - downSin);
    const farNorthCos = northCosEven - northCosOdd, farNorthSin = northSinEven - northSinOdd;
    const farEastCos = eastCosEven - eastCosOdd, farEastSin = eastSinEven - eastSinOdd;
    const farDownCos = downCosEven - downCosOdd, farDownSin = downSinEven - downSinOdd;
    put(k, farNorthCos + farNorthSin, farEastCos + farEastSin, farDownCos + farDownSin);
    put(columns - k, farNorthCos - farNorthSin, farEastCos - farEastSin, farDownCos - farDownSin);
  }
}
