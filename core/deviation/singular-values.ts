import { room, type Design, type Solution } from './linear-problem.js';

/** Singular values below this part of the largest are rounding. */
const RANK_TOLERANCE = 1e-9;
const SWEEPS = 60;

function dot(a: readonly number[], b: readonly number[], from = 0): number {
  let total = 0;
  for (let i = from; i < a.length; i++) total += (a[i] as number) * (b[i] as number);
  return total;
}

/**
 * Householder's reflections: the columns become a triangle as high as it is wide, and the
 * values, carried along as the last column, what belongs to it. Lengths and angles stay.
 */
function reduceToTriangle(columns: number[][]): void {
  const width = columns.length - 1;
  const height = Math.min(width, (columns[0] as number[]).length);
  for (let k = 0; k < height; k++) {
    const pivot = columns[k] as number[];
    const length = Math.sqrt(dot(pivot, pivot, k));
    const head = pivot[k] as number;
    if (length === 0) continue;
    const mirror = pivot.slice();
    mirror[k] = head + (head < 0 ? -length : length);
    const scale = 2 / dot(mirror, mirror, k);
    for (let j = k; j < columns.length; j++) {
      const column = columns[j] as number[];
      const amount = scale * dot(mirror, column, k);
      for (let i = k; i < column.length; i++) column[i] = (column[i] as number) - amount * (mirror[i] as number);
    }
  }
  for (const column of columns) column.length = height;
}

/** Turns two columns in their plane; the same turn is given to the columns of the basis. */
function turn(columns: number[][], p: number, q: number, cos: number, sin: number): void {
  const a = columns[p] as number[];
  const b = columns[q] as number[];
  for (let i = 0; i < a.length; i++) {
    const x = a[i] as number;
    const y = b[i] as number;
    a[i] = cos * x - sin * y;
    b[i] = sin * x + cos * y;
  }
}

/**
 * By the singular values, of full or deficient rank: reflections to a small
 * triangle, then pairs of its columns turned until all are square to each other (Hestenes's
 * one-sided Jacobi method; both from memory). No normal equations, so nothing of the
 * condition is squared.
 */
export function bySingularValues({ factors, width, values }: Design): Solution {
  const columns = Array.from({ length: width }, (_, j) => values.map((__, place) => factors[place * width + j] as number));
  const carried = values.slice();
  reduceToTriangle([...columns, carried]);
  const basis = Array.from({ length: width }, (_, j) => Array.from({ length: width }, (_, i) => (i === j ? 1 : 0)));
  for (let sweep = 0, moved = true; moved && sweep < SWEEPS; sweep++) {
    moved = false;
    for (let p = 0; p < width; p++) {
      for (let q = p + 1; q < width; q++) {
        const a = columns[p] as number[];
        const b = columns[q] as number[];
        const across = dot(a, b);
        const squareA = dot(a, a);
        const squareB = dot(b, b);
        if (Math.abs(across) <= 1e-15 * Math.sqrt(squareA * squareB)) continue;
        moved = true;
        const ratio = (squareB - squareA) / (2 * across);
        const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.sqrt(1 + ratio * ratio));
        const cos = 1 / Math.sqrt(1 + tangent * tangent);
        turn(columns, p, q, cos, cos * tangent);
        turn(basis, p, q, cos, cos * tangent);
      }
    }
  }
  const squares = columns.map((column) => dot(column, column));
  const largest = Math.max(...squares);
  const kept = squares.map((square) => square > RANK_TOLERANCE ** 2 * largest && square > 0);
  const estimate = room(width).fill(0);
  const cofactors = room(width * width).fill(0);
  squares.forEach((square, k) => {
    if (!kept[k]) return;
    const column = columns[k] as number[];
    const direction = basis[k] as number[];
    const amount = dot(column, carried) / square;
    for (let i = 0; i < width; i++) {
      estimate[i] = (estimate[i] as number) + amount * (direction[i] as number);
      for (let j = 0; j < width; j++) {
        cofactors[i * width + j] = (cofactors[i * width + j] as number) + ((direction[i] as number) * (direction[j] as number)) / square;
      }
    }
  });
  // A coefficient is fixed where no direction the readings cannot see has a part along it.
  const fixed = Array.from({ length: width }, (_, i) =>
    basis.every((direction, k) => kept[k] === true || Math.abs(direction[i] as number) < 1e-6),
  );
  const leverages = values.map((_, place) => {
    const row = factors.slice(place * width, (place + 1) * width);
    let leverage = 0;
    squares.forEach((square, k) => {
      if (kept[k]) leverage += dot(row, basis[k] as number[]) ** 2 / square;
    });
    return leverage;
  });
  return { estimate, fixed, rank: kept.filter(Boolean).length, cofactors, leverages };
}
