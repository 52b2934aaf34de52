/** The sides of a cell: 0 north, 1 east, 2 south, 3 west. */
export type Side = 0 | 1 | 2 | 3;

/** Where a line crosses a side: `part` of the way from west to east, or from north to south. */
export interface Crossing {
  readonly side: Side;
  readonly part: number;
}

/** Pieces of a line in a cell, each from crossing to crossing. */
export type CellPieces = readonly (readonly [Crossing, Crossing])[];

/** A direction, in degrees, made continuous with a neighbour's: less than half a turn from it. */
export function nearTo(neighbour: number, degrees: number): number {
  const turns = degrees - neighbour;
  if (turns > 180) return degrees - 360;
  return turns < -180 ? degrees + 360 : degrees;
}

/**
 * The pieces of the line of one level in a cell, none, one or two, each from crossing to
 * crossing. The values are those of the corners north-west, north-east, south-east and
 * south-west. A corner exactly on the level counts as above it. Where two opposite corners
 * are above and two below, the mean decides which pair holds together.
 */
export function crossCell(
  a: number,
  b: number,
  c: number,
  d: number,
  level: number,
): CellPieces {
  const shape = (a >= level ? 1 : 0) | (b >= level ? 2 : 0) | (c >= level ? 4 : 0) | (d >= level ? 8 : 0);
  if (shape === 0 || shape === 15) return [];
  const part = (from: number, to: number) => (level - from) / (to - from);
  const north = (): Crossing => ({ side: 0, part: part(a, b) });
  const east = (): Crossing => ({ side: 1, part: part(b, c) });
  const south = (): Crossing => ({ side: 2, part: part(d, c) });
  const west = (): Crossing => ({ side: 3, part: part(a, d) });
  switch (shape) {
    case 1:
    case 14:
      return [[west(), north()]];
    case 2:
    case 13:
      return [[north(), east()]];
    case 4:
    case 11:
      return [[east(), south()]];
    case 8:
    case 7:
      return [[south(), west()]];
    case 3:
    case 12:
      return [[west(), east()]];
    case 6:
    case 9:
      return [[north(), south()]];
    default: {
      const joined = (a + b + c + d) / 4 >= level === (shape === 5);
      return joined ? [[west(), south()], [north(), east()]] : [[west(), north()], [east(), south()]];
    }
  }
}
