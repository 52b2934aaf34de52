import type { Design, Solution } from './linear-problem.js';

/**
 * A column of which less than this part (of its square) is its own, and not what the columns
 * before it say already, is left to the method that squares no condition: here sixteen digits
 * become thirteen.
 */
const OWN_PART = 1e-3;

/** Sum of the products of two lists. */
function product(a: readonly number[], b: readonly number[]): number {
  let total = 0;
  for (let k = 0; k < a.length; k++) total += (a[k] as number) * (b[k] as number);
  return total;
}

/** The normal matrix's lower half, row by row. */
const normalHalf = ({ columns }: Design): number[][] => columns.map((one, i) => columns.slice(0, i + 1).map((other) => product(one, other)));

/** Cholesky's triangle L, with L Lᵀ the matrix given; null where a column is nearly made up of those before it. */
function triangleOf(normal: readonly (readonly number[])[]): number[][] | null {
  const triangle: number[][] = [];
  for (const [i, line] of normal.entries()) {
    const row = new Array<number>(i + 1);
    for (let j = 0; j <= i; j++) {
      const above = j === i ? row : (triangle[j] as number[]);
      let rest = line[j] as number;
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * (above[k] as number);
      if (j === i && !(rest > OWN_PART * (line[i] as number))) return null;
      row[j] = j === i ? Math.sqrt(rest) : rest / (above[j] as number);
    }
    triangle.push(row);
  }
  return triangle;
}

/** The inverse of a lower triangle, row by row. */
function inverted(triangle: readonly (readonly number[])[]): number[][] {
  const inverse: number[][] = [];
  triangle.forEach((row, i) => {
    const corner = row[i] as number;
    const line = new Array<number>(i + 1);
    for (let j = 0; j < i; j++) {
      let total = 0;
      for (let k = j; k < i; k++) total += (row[k] as number) * ((inverse[k] as number[])[j] as number);
      line[j] = -total / corner;
    }
    line[i] = 1 / corner;
    inverse.push(line);
  });
  return inverse;
}

function leveragesBy({ columns, values }: Design, inverse: readonly (readonly number[])[]): readonly number[] {
  return values.map((_, k) => {
    let leverage = 0;
    for (const line of inverse) {
      let part = 0;
      for (let j = 0; j < line.length; j++) part += (line[j] as number) * ((columns[j] as readonly number[])[k] as number);
      leverage += part * part;
    }
    return leverage;
  });
}

/** The inverse of the normal matrix, from that of its triangle. */
function cofactorsBy(inverse: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return inverse.map((_, i) =>
    inverse.map((__, j) => {
      let total = 0;
      for (let k = Math.max(i, j); k < inverse.length; k++) total += ((inverse[k] as readonly number[])[i] as number) * ((inverse[k] as readonly number[])[j] as number);
      return total;
    }),
  );
}

/** Solves L Lᵀ x = b in place: down the triangle, and up again. */
function solved(triangle: readonly (readonly number[])[], right: number[]): number[] {
  const width = triangle.length;
  for (let i = 0; i < width; i++) {
    const row = triangle[i] as readonly number[];
    let rest = right[i] as number;
    for (let k = 0; k < i; k++) rest -= (row[k] as number) * (right[k] as number);
    right[i] = rest / (row[i] as number);
  }
  for (let i = width - 1; i >= 0; i--) {
    let rest = right[i] as number;
    for (let k = i + 1; k < width; k++) rest -= ((triangle[k] as readonly number[])[i] as number) * (right[k] as number);
    right[i] = rest / ((triangle[i] as readonly number[])[i] as number);
  }
  return right;
}

/**
 * Least squares by the normal equations and Cholesky's triangle (from memory): much less work
 * than the singular values. Headings all round the compass have their columns well apart; null
 * where they are not.
 */
export function byNormalEquations(design: Design): Solution | null {
  const { columns, values } = design;
  const width = columns.length;
  if (values.length < width) return null;
  const triangle = triangleOf(normalHalf(design));
  if (triangle === null) return null;
  // A search by steps asks for what the solution is worth after its last step only.
  let inverse: readonly (readonly number[])[] | null = null;
  let cofactors: Solution['cofactors'] | null = null;
  let leverages: Solution['leverages'] | null = null;
  const inverseOnce = (): readonly (readonly number[])[] => (inverse ??= inverted(triangle));
  return {
    estimate: solved(triangle, columns.map((column) => product(column, values))),
    fixed: new Array<boolean>(width).fill(true),
    rank: width,
    get cofactors() {
      return (cofactors ??= cofactorsBy(inverseOnce()));
    },
    get leverages() {
      return (leverages ??= leveragesBy(design, inverseOnce()));
    },
  };
}
