import type { Design, Solution } from './linear-problem.js';

/**
 * A column of which less than this part (of its square) is its own, and not what the columns
 * before it say already, is left to the method that squares no condition: here sixteen digits
 * become thirteen.
 */
const OWN_PART = 1e-3;

/** The normal matrix's lower half, row by row, and its right-hand side. */
function accumulate({ rows, values }: Design, width: number): { normal: number[][]; right: number[] } {
  const normal = Array.from({ length: width }, (_, i) => new Array<number>(i + 1).fill(0));
  const right = new Array<number>(width).fill(0);
  rows.forEach((row, k) => {
    const value = values[k] as number;
    for (let i = 0; i < width; i++) {
      const factor = row[i] as number;
      const line = normal[i] as number[];
      right[i] = (right[i] as number) + factor * value;
      for (let j = 0; j <= i; j++) line[j] = (line[j] as number) + factor * (row[j] as number);
    }
  });
  return { normal, right };
}

/** Cholesky's triangle L, with L Lᵀ the matrix given; null where a column is nearly made up of those before it. */
function triangleOf(normal: readonly (readonly number[])[]): number[][] | null {
  const triangle: number[][] = [];
  for (const [i, line] of normal.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const above = j === i ? row : (triangle[j] as number[]);
      let rest = line[j] as number;
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * (above[k] as number);
      if (j === i && !(rest > OWN_PART * (line[i] as number))) return null;
      row.push(j === i ? Math.sqrt(rest) : rest / (above[j] as number));
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
    const line: number[] = [];
    for (let j = 0; j < i; j++) {
      let total = 0;
      for (let k = j; k < i; k++) total += (row[k] as number) * ((inverse[k] as number[])[j] as number);
      line.push(-total / corner);
    }
    line.push(1 / corner);
    inverse.push(line);
  });
  return inverse;
}

function leveragesBy({ rows }: Design, inverse: readonly (readonly number[])[]): readonly number[] {
  return rows.map((row) => {
    let leverage = 0;
    for (const line of inverse) {
      let part = 0;
      for (let j = 0; j < line.length; j++) part += (line[j] as number) * (row[j] as number);
      leverage += part * part;
    }
    return leverage;
  });
}

/**
 * Least squares by the normal equations and Cholesky's triangle (from memory): much less work
 * than the singular values. Headings all round the compass have their columns well apart; null
 * where they are not.
 */
export function byNormalEquations(design: Design): Solution | null {
  const width = (design.rows[0] as readonly number[]).length;
  if (design.rows.length < width) return null;
  const { normal, right } = accumulate(design, width);
  const triangle = triangleOf(normal);
  if (triangle === null) return null;
  const inverse = inverted(triangle);
  const cofactors = Array.from({ length: width }, () => new Array<number>(width).fill(0));
  for (let i = 0; i < width; i++) {
    for (let j = 0; j <= i; j++) {
      let total = 0;
      for (let k = i; k < width; k++) total += ((inverse[k] as number[])[i] as number) * ((inverse[k] as number[])[j] as number);
      (cofactors[i] as number[])[j] = total;
      (cofactors[j] as number[])[i] = total;
    }
  }
  const estimate = cofactors.map((line) => line.reduce((total, cofactor, i) => total + cofactor * (right[i] as number), 0));
  let leverages: readonly number[] | null = null;
  return {
    estimate,
    fixed: new Array<boolean>(width).fill(true),
    rank: width,
    cofactors,
    // A search by steps asks for them after its last step only.
    get leverages() {
      return (leverages ??= leveragesBy(design, inverse));
    },
  };
}
