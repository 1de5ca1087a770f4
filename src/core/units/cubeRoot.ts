/** Steps that bring the worst first guess, two and a half times off, to the last bit. One to spare. */
const steps = 10;

/**
 * The cube root by Newton's steps, a fixed number of them, so that every engine does the same sums. The first guess is
 * x^(1/4 + 1/16 + 1/64 + 1/256), made of square roots: the sum is nearly a third. Good to two units in the last place.
 */
export const cubeRoot = (x: number): number => {
  if (x === 0) return 0;
  if (x < 0) return -cubeRoot(-x);
  let part = x;
  let root = 1;
  for (let i = 0; i < 4; i++) {
    part = Math.sqrt(Math.sqrt(part));
    root *= part;
  }
  for (let i = 0; i < steps; i++) root -= (root - x / (root * root)) / 3;
  return root;
};
