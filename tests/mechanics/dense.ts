import { Matrix } from 'ml-matrix';
import type { Skyline } from '../../src/core/mechanics/skyline';

/** A skyline matrix written out in full, for a library that knows nothing of skylines. */
export const dense = ({ n, top, diagonal, values }: Skyline): Matrix => {
  const full = Matrix.zeros(n, n);
  for (let j = 0; j < n; j++) {
    for (let i = top[j] as number; i <= j; i++) {
      const k = values[(diagonal[j] as number) - j + i] as number;
      full.set(i, j, k).set(j, i, k);
    }
  }
  return full;
};
