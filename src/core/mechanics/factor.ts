import type { Skyline } from './skyline';

/** L·D·Lᵀ of a skyline matrix, in its own shape: D on the diagonal, the columns of Lᵀ above it. */
export type Factored = {
  readonly matrix: Skyline;
  /** First unknown whose pivot is no more than `leastPivot` of its own stiffness; undefined when all are sound. */
  readonly loose: number | undefined;
};

/** A pivot this small a part of the stiffness it came from means that nothing holds there. Ours: relative, so free of scale. */
export const leastPivot = 1e-10;

/** Factors in place, column by column from `start` on, and stops at the first unknown that nothing holds. */
export const factored = (matrix: Skyline, start = 0): Factored => {
  const { n, top, diagonal, values } = matrix;
  for (let j = start; j < n; j++) {
    const first = top[j] as number;
    const base = (diagonal[j] as number) - j;
    for (let i = first + 1; i < j; i++) {
      const other = (diagonal[i] as number) - i;
      const from = Math.max(first, top[i] as number);
      let sum = values[base + i] as number;
      for (let k = from; k < i; k++) sum -= (values[other + k] as number) * (values[base + k] as number);
      values[base + i] = sum;
    }
    const own = values[base + j] as number;
    let pivot = own;
    for (let i = first; i < j; i++) {
      const g = values[base + i] as number;
      const l = g / (values[diagonal[i] as number] as number);
      values[base + i] = l;
      pivot -= l * g;
    }
    if (!(pivot > leastPivot * Math.abs(own))) return { matrix, loose: j };
    values[base + j] = pivot;
  }
  return { matrix, loose: undefined };
};

/**
 * Factors in place a matrix that differs from one factored before only from unknown `from` on: what comes before is taken
 * over, to the last bit.
 */
export const factoredAgain = (matrix: Skyline, before: Factored, from: number): Factored => {
  const start = Math.min(from, before.loose ?? from);
  if (start > 0) {
    const kept = (matrix.diagonal[start - 1] as number) + 1;
    matrix.values.set(before.matrix.values.subarray(0, kept));
  }
  return factored(matrix, start);
};

/** The x with matrix · x = load. The matrix must be sound. */
export const solved = ({ matrix }: Factored, load: Float64Array): Float64Array => {
  const { n, top, diagonal, values } = matrix;
  const x = load.slice();
  for (let j = 0; j < n; j++) {
    const base = (diagonal[j] as number) - j;
    let sum = x[j] as number;
    for (let i = top[j] as number; i < j; i++) sum -= (values[base + i] as number) * (x[i] as number);
    x[j] = sum;
  }
  for (let j = 0; j < n; j++) x[j] = (x[j] as number) / (values[diagonal[j] as number] as number);
  return backward(matrix, x, n);
};

/** Lᵀ · x = y from unknown `from` − 1 up, in place. */
const backward = ({ top, diagonal, values }: Skyline, x: Float64Array, from: number): Float64Array => {
  for (let j = from - 1; j >= 0; j--) {
    const base = (diagonal[j] as number) - j;
    const by = x[j] as number;
    for (let i = top[j] as number; i < j; i++) x[i] = (x[i] as number) - (values[base + i] as number) * by;
  }
  return x;
};

/** The way a frame goes that has nothing to hold unknown `loose`: Lᵀ · v = e over the part that was factored. */
export const wayOf = ({ matrix, loose }: Factored): Float64Array => {
  const way = new Float64Array(matrix.n);
  if (loose === undefined) return way;
  way[loose] = 1;
  return backward(matrix, way, loose + 1);
};
