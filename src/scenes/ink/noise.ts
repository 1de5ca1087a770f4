/** Repeatable unevenness for drawing: wood, pencil, chalk. Never used for anything that counts. */

export const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
export const clamp = (x: number, low = 0, high = 1): number => (x < low ? low : x > high ? high : x);
/** 0 at `a`, 1 at `b`, eased at both ends. */
export const smooth = (a: number, b: number, x: number): number => {
  const t = clamp((x - a) / (b - a));
  return t * t * (3 - 2 * t);
};

/** Three whole numbers to 0…1. */
export const hash = (x: number, y = 0, z = 0): number => {
  let h = Math.imul(x | 0, 374761393) + Math.imul(y | 0, 668265263) + Math.imul(z | 0, 1274126177);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  h = Math.imul(h ^ (h >>> 16), 2246822519);
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296;
};

/** A row of even numbers 0…1 from a seed. */
export const dice = (seed: number): (() => number) => {
  let s = seed | 0 || 1;
  return () => {
    s = (s + 0x6d2b79f5) | 0;
    let t = Math.imul(s ^ (s >>> 15), 1 | s);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

const ease = (t: number): number => t * t * (3 - 2 * t);

/** Smooth noise along a line, 0…1. */
export const noise1 = (x: number, seed = 0): number => {
  const i = Math.floor(x);
  return mix(hash(i, seed), hash(i + 1, seed), ease(x - i));
};

/** Smooth noise over a plane, 0…1. */
export const noise2 = (x: number, y: number, seed = 0): number => {
  const i = Math.floor(x);
  const j = Math.floor(y);
  const a = ease(x - i);
  const low = mix(hash(i, j, seed), hash(i + 1, j, seed), a);
  return mix(low, mix(hash(i, j + 1, seed), hash(i + 1, j + 1, seed), a), ease(y - j));
};
