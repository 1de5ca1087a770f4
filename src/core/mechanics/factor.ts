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
      reduced = j + 3;
      rows = j;
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
const reduceThree = (matrix: Skyline, j: number): void => {
  const { top } = matrix;
  const first = top[j] as number;
  for (let i = first + 1; i < j; i++) {
    if (i + 2 < j && top[i + 1] === top[i] && top[i + 2] === top[i]) {
      reduceNine(matrix, j, i);
      i += 2;
    } else reduceRow(matrix, j, i);
  }
};

/** One row of three columns. */
const reduceRow = ({ top, diagonal, values }: Skyline, j: number, i: number): void => {
  const one = (diagonal[j] as number) - j;
  const two = (diagonal[j + 1] as number) - (j + 1);
  const three = (diagonal[j + 2] as number) - (j + 2);
  const other = (diagonal[i] as number) - i;
  let a = values[one + i] as number;
  let b = values[two + i] as number;
  let c = values[three + i] as number;
  for (let k = Math.max(top[j] as number, top[i] as number); k < i; k++) {
    const l = values[other + k] as number;
    a -= l * (values[one + k] as number);
    b -= l * (values[two + k] as number);
    c -= l * (values[three + k] as number);
  }
  values[one + i] = a;
  values[two + i] = b;
  values[three + i] = c;
};

/** Three rows that start alike, of three columns: each number that is read serves three sums. */
const reduceNine = ({ top, diagonal, values }: Skyline, j: number, i: number): void => {
  const one = (diagonal[j] as number) - j;
  const two = (diagonal[j + 1] as number) - (j + 1);
  const three = (diagonal[j + 2] as number) - (j + 2);
  const p = (diagonal[i] as number) - i;
  const q = (diagonal[i + 1] as number) - (i + 1);
  const r = (diagonal[i + 2] as number) - (i + 2);
  let p1 = values[one + i] as number;
  let q1 = values[one + i + 1] as number;
  let r1 = values[one + i + 2] as number;
  let p2 = values[two + i] as number;
  let q2 = values[two + i + 1] as number;
  let r2 = values[two + i + 2] as number;
  let p3 = values[three + i] as number;
  let q3 = values[three + i + 1] as number;
  let r3 = values[three + i + 2] as number;
  for (let k = Math.max(top[j] as number, top[i] as number); k < i; k++) {
    const lp = values[p + k] as number;
    const lq = values[q + k] as number;
    const lr = values[r + k] as number;
    const x1 = values[one + k] as number;
    const x2 = values[two + k] as number;
    const x3 = values[three + k] as number;
    p1 -= lp * x1;
    p2 -= lp * x2;
    p3 -= lp * x3;
    q1 -= lq * x1;
    q2 -= lq * x2;
    q3 -= lq * x3;
    r1 -= lr * x1;
    r2 -= lr * x2;
    r3 -= lr * x3;
  }
  const below = values[q + i] as number;
  q1 -= below * p1;
  q2 -= below * p2;
  q3 -= below * p3;
  const far = values[r + i] as number;
  const near = values[r + i + 1] as number;
  values[one + i] = p1;
  values[one + i + 1] = q1;
  values[one + i + 2] = r1 - far * p1 - near * q1;
  values[two + i] = p2;
  values[two + i + 1] = q2;
  values[two + i + 2] = r2 - far * p2 - near * q2;
  values[three + i] = p3;
  values[three + i + 1] = q3;
  values[three + i + 2] = r3 - far * p3 - near * q3;
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
