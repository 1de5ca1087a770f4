import type { Skyline } from './skyline';

/** L·D·Lᵀ of a skyline matrix, in its own shape: D on the diagonal, the columns of Lᵀ above it. */
export type Factored = {
  readonly matrix: Skyline;
  /** First unknown whose pivot is no more than `leastPivot` of its own stiffness; undefined when all are sound. */
  readonly loose: number | undefined;
};

/** A pivot this small a part of the stiffness it came from means that nothing holds there. Ours: relative, so free of scale. */
export const leastPivot = 1e-10;

/**
 * Factors in place, column by column from `start` on, and stops at the first unknown that nothing holds. Columns before
 * `start` must be factored already: the rest then comes out to the last bit as if all had been.
 */
export const factored = (matrix: Skyline, start = 0): Factored => {
  const { n, top } = matrix;
  let reduced = start;
  let rows = 0;
  for (let j = start; j < n; j++) {
    const first = top[j] as number;
    if (j === reduced && j + 2 < n && top[j + 1] === first && top[j + 2] === first) {
      reduceThree(matrix, j);
      [reduced, rows] = [j + 3, j];
    }
    reduce(matrix, j, j < reduced ? Math.max(rows, first + 1) : first + 1);
    if (!finished(matrix, j)) return { matrix, loose: j };
    if (j >= reduced) reduced = j + 1;
  }
  return { matrix, loose: undefined };
};

/** Takes from column j, row by row from `from` on, what the columns before it account for. */
const reduce = ({ top, diagonal, values }: Skyline, j: number, from: number): void => {
  const first = top[j] as number;
  const base = (diagonal[j] as number) - j;
  for (let i = from; i < j; i++) {
    const other = (diagonal[i] as number) - i;
    let sum = values[base + i] as number;
    for (let k = Math.max(first, top[i] as number); k < i; k++)
      sum -= (values[other + k] as number) * (values[base + k] as number);
    values[base + i] = sum;
  }
};

/** The same for columns j to j + 2, which start alike: the moves or the turns of one node. Each sums in its own order. */
const reduceThree = ({ top, diagonal, values }: Skyline, j: number): void => {
  const first = top[j] as number;
  const one = (diagonal[j] as number) - j;
  const two = (diagonal[j + 1] as number) - (j + 1);
  const three = (diagonal[j + 2] as number) - (j + 2);
  for (let i = first + 1; i < j; i++) {
    const other = (diagonal[i] as number) - i;
    let [a, b, c] = [values[one + i] as number, values[two + i] as number, values[three + i] as number];
    for (let k = Math.max(first, top[i] as number); k < i; k++) {
      const l = values[other + k] as number;
      a -= l * (values[one + k] as number);
      b -= l * (values[two + k] as number);
      c -= l * (values[three + k] as number);
    }
    values[one + i] = a;
    values[two + i] = b;
    values[three + i] = c;
  }
};

/** Divides a reduced column by its pivots and sets its own; false when nothing holds it. */
const finished = ({ top, diagonal, values }: Skyline, j: number): boolean => {
  const base = (diagonal[j] as number) - j;
  const own = values[base + j] as number;
  let pivot = own;
  for (let i = top[j] as number; i < j; i++) {
    const g = values[base + i] as number;
    const l = g / (values[diagonal[i] as number] as number);
    values[base + i] = l;
    pivot -= l * g;
  }
  if (!(pivot > leastPivot * Math.abs(own))) return false;
  values[base + j] = pivot;
  return true;
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
