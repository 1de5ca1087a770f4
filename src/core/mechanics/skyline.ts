/**
 * A symmetric matrix kept by columns, each from its first entry that is not zero down to the diagonal: the form in which
 * the stiffness of a roof stays small, since stations touch only their neighbours.
 */
export type Skyline = {
  readonly n: number;
  /** First row kept of each column. */
  readonly top: Int32Array;
  /** Where each column's diagonal lies in `values`. */
  readonly diagonal: Int32Array;
  readonly values: Float64Array;
};

/** The equations of a frame: stiffness · moves = load. */
export type Equations = { readonly stiffness: Skyline; readonly load: Float64Array };

/** What is kept of a matrix, without its numbers. */
export type Shape = Omit<Skyline, 'values'>;

/** First rows of columns of which no two unknowns meet yet: each its own diagonal. */
export const apartTops = (n: number): Int32Array => {
  const top = new Int32Array(n);
  for (let i = 0; i < n; i++) top[i] = i;
  return top;
};

/** Lets the unknowns of some rows meet: each column reaches up to the first of them all. Unknowns below 0 are held. */
export const meet = (top: Int32Array, rows: readonly ArrayLike<number>[]): void => {
  let first = top.length;
  for (const row of rows) first = firstOf(row, first);
  for (const row of rows) reachUp(top, row, first);
};

/** The same for the unknowns of one row. */
export const meetIn = (top: Int32Array, row: ArrayLike<number>): void =>
  reachUp(top, row, firstOf(row, top.length));

const firstOf = (row: ArrayLike<number>, before: number): number => {
  let first = before;
  for (let i = 0; i < row.length; i++) {
    const dof = row[i] as number;
    if (dof >= 0 && dof < first) first = dof;
  }
  return first;
};

const reachUp = (top: Int32Array, row: ArrayLike<number>, first: number): void => {
  for (let i = 0; i < row.length; i++) {
    const dof = row[i] as number;
    if (dof >= 0 && first < (top[dof] as number)) top[dof] = first;
  }
};

/** The shape with these first rows. */
export const shapeWith = (top: Int32Array): Shape => {
  const n = top.length;
  const diagonal = new Int32Array(n);
  let size = 0;
  for (let j = 0; j < n; j++) {
    size += j - (top[j] as number) + 1;
    diagonal[j] = size - 1;
  }
  return { n, top, diagonal };
};

/** Room for the numbers of one matrix after the other: whoever lays one there is done with the one before. */
export type Room = (size: number) => Float64Array;

/** Fresh memory for every frame costs more than filling it. */
export const openRoom = (): Room => {
  let all = new Float64Array(0);
  return (size) => {
    if (all.length < size) all = new Float64Array(2 * size);
    return all.subarray(0, size);
  };
};

const ownRoom: Room = (size) => new Float64Array(size);

/** A matrix of a shape, all zeros. */
export const emptyIn = ({ n, top, diagonal }: Shape, room: Room = ownRoom): Skyline => {
  const size = n === 0 ? 0 : (diagonal[n - 1] as number) + 1;
  return { n, top, diagonal, values: room(size).fill(0) };
};

/** The same shape with the same numbers, to be changed apart. */
export const copied = ({ n, top, diagonal, values }: Skyline, room: Room = ownRoom): Skyline => {
  const own = room(values.length);
  own.set(values);
  return { n, top, diagonal, values: own };
};

/** Takes over another's numbers from column `from` on. */
export const refilled = ({ diagonal, values }: Skyline, other: Skyline, from: number): void => {
  const start = from === 0 ? 0 : (diagonal[from - 1] as number) + 1;
  values.set(other.values.subarray(start), start);
};

type Coefs = { readonly dofs: ArrayLike<number>; readonly coefs: Float64Array };

/** Adds `times`·row·rowᵀ to columns from `from` on. Entries of `dofs` below 0 are held and left out. */
export const addOuter = (
  { diagonal, values }: Skyline,
  { dofs, coefs }: Coefs,
  { times, from = 0 }: { readonly times: number; readonly from?: number },
): void => {
  const size = dofs.length;
  for (let a = 0; a < size; a++) {
    const j = dofs[a] as number;
    if (j < from) continue;
    const by = times * (coefs[a] as number);
    const start = (diagonal[j] as number) - j;
    for (let b = 0; b < size; b++) {
      const i = dofs[b] as number;
      if (i < 0 || i > j) continue;
      values[start + i] = (values[start + i] as number) + by * (coefs[b] as number);
    }
  }
};

/** Adds a full symmetric block at the given unknowns, each of them named once; `times` scales it. */
export const addBlock = (
  { diagonal, values }: Skyline,
  { dofs, block }: { readonly dofs: ArrayLike<number>; readonly block: Float64Array },
  times = 1,
): void => {
  const size = dofs.length;
  const filled = pairsIn(block, size);
  for (let p = 0; p < filled.length; p += 2) {
    const a = filled[p] as number;
    const b = filled[p + 1] as number;
    const i = dofs[b] as number;
    const j = dofs[a] as number;
    if (i < 0 || j < 0) continue;
    // Each pair once, in the column of the later unknown.
    const at = i < j ? (diagonal[j] as number) - j + i : (diagonal[i] as number) - i + j;
    const part = block[i < j ? a * size + b : b * size + a] as number;
    values[at] = (values[at] as number) + times * part;
  }
};

/** Row and column of what is not zero on and below a block's diagonal, one after the other: of most blocks that is half or less. */
const pairsIn = (block: Float64Array, size: number): Uint8Array => {
  const known = pairs.get(block);
  if (known) return known;
  const found: number[] = [];
  for (let a = 0; a < size; a++)
    for (let b = 0; b <= a; b++) if (block[a * size + b] !== 0 || block[b * size + a] !== 0) found.push(a, b);
  const made = Uint8Array.from(found);
  pairs.set(block, made);
  return made;
};
const pairs = new WeakMap<Float64Array, Uint8Array>();

/** matrix · x. */
export const multiplied = ({ n, top, diagonal, values }: Skyline, x: Float64Array): Float64Array => {
  const y = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const d = diagonal[j] as number;
    let sum = (values[d] as number) * (x[j] as number);
    for (let i = top[j] as number; i < j; i++) {
      const k = values[d - j + i] as number;
      sum += k * (x[i] as number);
      y[i] = (y[i] as number) + k * (x[j] as number);
    }
    y[j] = (y[j] as number) + sum;
  }
  return y;
};

/** Largest sum of magnitudes along a row. */
export const rowNorm = ({ n, top, diagonal, values }: Skyline): number => {
  const sums = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const d = diagonal[j] as number;
    for (let i = top[j] as number; i <= j; i++) {
      const k = Math.abs(values[d - j + i] as number);
      sums[i] = (sums[i] as number) + k;
      if (i < j) sums[j] = (sums[j] as number) + k;
    }
  }
  return sums.reduce((a, b) => Math.max(a, b), 0);
};
