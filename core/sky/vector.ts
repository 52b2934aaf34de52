/** A place or direction in space; the frame and the unit are said where it is made. */
export type Vector = readonly [x: number, y: number, z: number];

export function add(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function scale(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

export function subtract(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function length(a: Vector): number {
  return Math.sqrt(dot(a, a));
}

export function unit(a: Vector): Vector {
  return scale(a, 1 / length(a));
}
