import { room, type Design, type Solution } from './linear-problem.js';

/**
 * An unknown of whose factors less than this part (of the square) is its own, and not what those
 * before it say already, is left to the method that squares no condition: here sixteen digits
 * become thirteen.
 */
const OWN_PART = 1e-3;

/** The normal matrix's lower half, row by row as in a square. */
function normalHalf({ factors, width }: Design): number[] {
  const normal = room(width * width);
  for (let i = 0; i < width; i++) {
    for (let j = 0; j <= i; j++) {
      let total = 0;
      for (let row = 0; row < factors.length; row += width) total += (factors[row + i] as number) * (factors[row + j] as number);
      normal[i * width + j] = total;
    }
  }
  return normal;
}

/** The right side: each unknown's factors times the values. */
function rightSide({ factors, width, values }: Design): number[] {
  const right = room(width);
  for (let i = 0; i < width; i++) {
    let total = 0;
    for (let k = 0; k < values.length; k++) total += (factors[k * width + i] as number) * (values[k] as number);
    right[i] = total;
  }
  return right;
}

/** Turns the normal matrix's lower half into Cholesky's triangle L, with L Lᵀ that matrix; false where an unknown's factors are nearly made up of those before it. */
function becomesTriangle(lower: number[], width: number): boolean {
  for (let i = 0; i < width; i++) {
    const own = lower[i * width + i] as number;
    for (let j = 0; j <= i; j++) {
      let rest = lower[i * width + j] as number;
      for (let k = 0; k < j; k++) rest -= (lower[i * width + k] as number) * (lower[j * width + k] as number);
      if (j === i && !(rest > OWN_PART * own)) return false;
      lower[i * width + j] = j === i ? Math.sqrt(rest) : rest / (lower[j * width + j] as number);
    }
  }
  return true;
}

/** The inverse of a lower triangle. */
function inverted(triangle: readonly number[], width: number): number[] {
  const inverse = room(width * width);
  for (let i = 0; i < width; i++) {
    const corner = triangle[i * width + i] as number;
    for (let j = 0; j < i; j++) {
      let total = 0;
      for (let k = j; k < i; k++) total += (triangle[i * width + k] as number) * (inverse[k * width + j] as number);
      inverse[i * width + j] = -total / corner;
    }
    inverse[i * width + i] = 1 / corner;
  }
  return inverse;
}

function leveragesBy({ factors, width, values }: Design, inverse: readonly number[]): number[] {
  const leverages = room(values.length);
  for (let k = 0; k < leverages.length; k++) {
    let leverage = 0;
    for (let i = 0; i < width; i++) {
      let part = 0;
      for (let j = 0; j <= i; j++) part += (inverse[i * width + j] as number) * (factors[k * width + j] as number);
      leverage += part * part;
    }
    leverages[k] = leverage;
  }
  return leverages;
}

/** The inverse of the normal matrix, from that of its triangle. */
function cofactorsBy(inverse: readonly number[], width: number): number[] {
  const cofactors = room(width * width);
  for (let i = 0; i < width; i++) {
    for (let j = 0; j < width; j++) {
      let total = 0;
      for (let k = Math.max(i, j); k < width; k++) total += (inverse[k * width + i] as number) * (inverse[k * width + j] as number);
      cofactors[i * width + j] = total;
    }
  }
  return cofactors;
}

/** Solves L Lᵀ x = b in place: down the triangle, and up again. */
function solved(triangle: readonly number[], right: number[]): number[] {
  const width = right.length;
  for (let i = 0; i < width; i++) {
    let rest = right[i] as number;
    for (let k = 0; k < i; k++) rest -= (triangle[i * width + k] as number) * (right[k] as number);
    right[i] = rest / (triangle[i * width + i] as number);
  }
  for (let i = width - 1; i >= 0; i--) {
    let rest = right[i] as number;
    for (let k = i + 1; k < width; k++) rest -= (triangle[k * width + i] as number) * (right[k] as number);
    right[i] = rest / (triangle[i * width + i] as number);
  }
  return right;
}

/**
 * Least squares by the normal equations and Cholesky's triangle (from memory): much less work
 * than the singular values. Headings all round the compass have their factors well apart; null
 * where they are not.
 */
export function byNormalEquations(design: Design): Solution | null {
  const { width, values } = design;
  if (values.length < width) return null;
  const triangle = normalHalf(design);
  if (!becomesTriangle(triangle, width)) return null;
  // A search by steps asks for what the solution is worth after its last step only.
  let inverse: readonly number[] | null = null;
  let cofactors: readonly number[] | null = null;
  let leverages: readonly number[] | null = null;
  const inverseOnce = (): readonly number[] => (inverse ??= inverted(triangle, width));
  return {
    estimate: solved(triangle, rightSide(design)),
    fixed: new Array<boolean>(width).fill(true),
    rank: width,
    get cofactors() {
      return (cofactors ??= cofactorsBy(inverseOnce(), width));
    },
    get leverages() {
      return (leverages ??= leveragesBy(design, inverseOnce()));
    },
  };
}
