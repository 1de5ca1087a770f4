/** What the benches share. Times in ms. */

export const median = (all: readonly number[]): number =>
  [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? NaN;

/** Median of fifteen, after three and a fifth of a second to warm up. */
export const timed = (work: () => unknown): number => {
  const began = performance.now();
  for (let i = 0; i < 3 || performance.now() - began < 200; i++) work();
  return median(
    Array.from({ length: 15 }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );
};

/** Least squares through the logarithms: time grows as the size to this power. */
export const powerOf = (rows: readonly (readonly [size: number, ms: number])[]): number => {
  const at = rows.map(([size, ms]) => [Math.log(size), Math.log(ms)] as const);
  const mean = (i: 0 | 1): number => at.reduce((sum, point) => sum + point[i], 0) / at.length;
  const [x, y] = [mean(0), mean(1)];
  const over = at.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0);
  return over / at.reduce((sum, [a]) => sum + (a - x) * (a - x), 0);
};
