/** Sums that come out to the same bits on every engine: only + − × ÷ and square roots. */

const twoPi = 6.283185307179586;

/** Sine of an angle in radians, to about 1e-9. */
export const sin = (angle: number): number => {
  const turned = angle - Math.round(angle / twoPi) * twoPi;
  const half = twoPi / 2;
  const quarter = twoPi / 4;
  const x = turned > quarter ? half - turned : turned < -quarter ? -half - turned : turned;
  const square = x * x;
  let term = x;
  let sum = x;
  for (let n = 2; n <= 16; n += 2) {
    term *= -square / (n * (n + 1));
    sum += term;
  }
  return sum;
};

export const cos = (angle: number): number => sin(angle + twoPi / 4);

/** The sine of so many turns: what an oscillator asks for. */
export const wave = (turns: number): number => sin(turns * twoPi);

/** e to the x, for x from −60 to 8: a short series for a small part of x, squared ten times. */
export const exp = (x: number): number => {
  const small = x / 1024;
  let power = 1 + small * (1 + (small / 2) * (1 + (small / 3) * (1 + small / 4)));
  for (let i = 0; i < 10; i++) power *= power;
  return power;
};

/** A stream of numbers from 0 to 1 for one seed: a counter, stirred. Not the site's dice; those belong to the levels. */
export const stream = (seed: number): (() => number) => {
  let counter = seed >>> 0;
  return () => {
    counter = (counter + 0x9e3779b9) >>> 0;
    let mixed = counter;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  };
};
