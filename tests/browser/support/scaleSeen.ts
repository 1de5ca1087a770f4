import type { PNG } from 'pngjs';

/** Reads a ruled scale off a picture by its pixels alone: where its ticks are, and which of them are long. */

/** What a picture is asked for: along a row (`across`) or a column (`up`), and device pixels to a CSS pixel. */
export type Looked = { readonly png: PNG; readonly way: 'across' | 'up'; readonly ratio: number };

/** One pixel's tone and how much of the page behind it is covered: 0…255, 0…1. */
export type Pixel = {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  readonly cover: number;
};

/** A scale as seen. Device pixels along the way it runs; `pitch` is one sixteenth, positive in reading direction. */
export type Scale = {
  readonly ticks: readonly number[];
  readonly pitch: number;
  /** Where along the other way ticks begin, and to which side they grow. */
  readonly edge: number;
  readonly grows: 1 | -1;
  /** How many sixteenths past an inch the first tick may be: one, or more where too few ticks are in sight to tell. */
  readonly first: readonly number[];
};

/** Along the scale and square to it; square counts down in a scale that runs across, and right in one that stands. */
export const pixelAt = ({ png, way }: Looked, along: number, square: number): Pixel => {
  const [x, y] = way === 'across' ? [along, square] : [square, along];
  const i = (y * png.width + x) * 4;
  const [red = 0, green = 0, blue = 0, alpha = 0] = png.data.subarray(i, i + 4);
  return { red, green, blue, cover: alpha / 255 };
};

export const lengthOf = ({ png, way }: Looked): number => (way === 'across' ? png.width : png.height);
export const depthOf = ({ png, way }: Looked): number => (way === 'across' ? png.height : png.width);

/** Ink of an engraved tick is this much darker than steel or paint, 0…1. */
const dark = ({ red, green, blue, cover }: Pixel): number =>
  cover < 0.9 ? 0 : Math.max(0, 1 - (0.3 * red + 0.59 * green + 0.11 * blue) / 165);

const inked = 0.25;
/** A tick is no wider than this, CSS pixels. */
const widest = 4;
/** Sixteenths closer than this belong to a small drawing of the whole tool, not to the scale. CSS pixels. */
const closest = 11;
/** How far off the even step a tick may lie, CSS pixels: how its rim is smoothed depends on where it falls. */
const uneven = 0.45;
/** A tick so near the picture's end may be cut in half, CSS pixels. */
const cut = 2.03;

/** Middles of the thin dark runs on one line along the scale. */
const runsOn = (looked: Looked, square: number): readonly number[] => {
  const runs: number[] = [];
  let [sum, moment, from] = [0, 0, -1];
  for (let i = 0; i <= lengthOf(looked); i++) {
    const d = i < lengthOf(looked) ? dark(pixelAt(looked, i, square)) : 0;
    if (d > 0.05) {
      if (from < 0) from = i;
      sum += d;
      moment += d * (i + 0.5);
    } else if (from >= 0) {
      const at = moment / sum;
      const whole = at > cut * looked.ratio && at < lengthOf(looked) - cut * looked.ratio;
      if (whole && sum > inked && i - from <= widest * looked.ratio) runs.push(at);
      [sum, moment, from] = [0, 0, -1];
    }
  }
  return runs;
};

/** The longest row of runs that lie evenly. */
const evenIn = (runs: readonly number[], ratio: number): readonly number[] => {
  let best: readonly number[] = [];
  for (let i = 0; i + 1 < runs.length; i++)
    for (let j = i + 1; j < Math.min(runs.length, i + 4); j++) {
      const step = (runs[j] as number) - (runs[i] as number);
      if (step < closest * ratio) continue;
      const chain = [runs[i] as number, runs[j] as number];
      for (const run of runs.slice(j + 1)) {
        const pitch = ((chain.at(-1) as number) - (chain[0] as number)) / (chain.length - 1);
        if (Math.abs(run - (chain.at(-1) as number) - pitch) < uneven * ratio) chain.push(run);
      }
      if (chain.length > best.length) best = chain;
    }
  return best;
};

/** How far a tick goes on to both sides of a line through it. */
const reachOf = (looked: Looked, tick: number, square: number): readonly [number, number] => {
  const at = Math.min(lengthOf(looked) - 1, Math.floor(tick));
  const on = (line: number): boolean =>
    [-1, 0, 1].some(
      (by) => dark(pixelAt(looked, Math.max(0, Math.min(lengthOf(looked) - 1, at + by)), line)) > inked,
    );
  let [low, high] = [square, square];
  while (low > 0 && on(low - 1)) low--;
  while (high < depthOf(looked) - 1 && on(high + 1)) high++;
  return [low, high + 1];
};

/** How far they lie apart, without the fifth that lies furthest: a tick may run into a line of the drawing. */
const spreadOf = (all: readonly number[]): number => {
  const middle = medianOf(all);
  const offs = all.map((one) => Math.abs(one - middle)).sort((a, b) => a - b);
  return offs.slice(0, Math.ceil(all.length * 0.8)).reduce((sum, off) => sum + off, 0);
};

export const medianOf = (all: readonly number[]): number =>
  [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? NaN;

/** Inch, half, quarter, eighth, sixteenth: how long ticks are on a common rule or tape, as shares of the inch's. */
const ladder = (n: number): number => {
  const i = ((n % 16) + 16) % 16;
  return i === 0 ? 1 : i === 8 ? 0.78 : i % 4 === 0 ? 0.6 : i % 2 === 0 ? 0.45 : 0.3;
};

/** Which tick of an inch the first may be, told by which ticks are long, and how far the best is from a common rule. */
const firstOf = (
  lengths: readonly number[],
  step: 1 | -1,
): { readonly first: readonly number[]; readonly off: number } => {
  const misfit = (first: number): number => {
    const wanted = lengths.map((_, i) => ladder(first + i * step));
    const k = medianOf(lengths.map((length, i) => length / (wanted[i] as number)));
    const offs = lengths.map((length, i) => Math.abs(length / k - (wanted[i] as number)));
    return offs.reduce((sum, off) => sum + Math.min(off, 0.5), 0) / lengths.length;
  };
  const all = Array.from({ length: 16 }, (_, first) => ({ first, off: misfit(first) }));
  const best = Math.min(...all.map(({ off }) => off));
  return { first: all.filter(({ off }) => off < best + 0.012).map(({ first }) => first), off: best };
};

/** Ticks' lengths are so near a common rule's, as shares of an inch's. */
const alike = 0.09;

/** At least so many ticks, and each of them at least so long, CSS pixels. */
export type Least = { readonly ticks: number; readonly long: number };

type Chain = { readonly ticks: readonly number[]; readonly squares: number[] };

/** Even rows of dark runs that go on from line to line, the longest first. */
const chainsIn = (looked: Looked, least: Least): readonly Chain[] => {
  const chains: Chain[] = [];
  let last: Chain | undefined;
  for (let square = 0; square < depthOf(looked); square++) {
    const ticks = evenIn(runsOn(looked, square), looked.ratio);
    const same =
      last?.ticks.length === ticks.length &&
      ticks.every((tick, i) => Math.abs(tick - (last?.ticks[i] as number)) < uneven * looked.ratio);
    if (same) last?.squares.push(square);
    else {
      last = { ticks, squares: [square] };
      if (ticks.length >= least.ticks) chains.push(last);
    }
  }
  return chains
    .filter(({ squares }) => squares.length >= least.long * looked.ratio)
    .sort((one, other) => other.ticks.length - one.ticks.length);
};

const scaleOf = (looked: Looked, { ticks, squares }: Chain): Scale | undefined => {
  const square = squares[Math.floor(squares.length / 2)] as number;
  const reaches = ticks.map((tick) => reachOf(looked, tick, square));
  const [lows, highs] = [reaches.map(([low]) => low), reaches.map(([, high]) => high)];
  const grows = spreadOf(lows) <= spreadOf(highs) ? 1 : -1;
  const edge = medianOf(grows > 0 ? lows : highs);
  const step = looked.way === 'across' ? 1 : -1;
  const { first, off } = firstOf(
    grows > 0 ? highs.map((high) => high - edge) : lows.map((low) => edge - low),
    step,
  );
  if (off > alike) return undefined;
  const pitch = ((ticks.at(-1) as number) - (ticks[0] as number)) / (ticks.length - 1);
  return { ticks, pitch: pitch * step, edge, grows, first };
};

/** The scale of a picture, or undefined where no line of it has so many even ticks, long and short as on a rule. */
export const scaleSeen = (looked: Looked, least: Least = { ticks: 3, long: 3 }): Scale | undefined => {
  for (const chain of chainsIn(looked, least)) {
    const scale = scaleOf(looked, chain);
    if (scale) return scale;
  }
  return undefined;
};

/**
 * How far a place on the picture lies from where a reading puts it, device pixels: inches count by the ticks' lengths,
 * so whole inches are left out. The least, where more than one tick may be the first.
 */
export const offScale = ({ ticks, pitch, first }: Scale, at: number, inches: number): number => {
  const sixteenths = (at - (ticks[0] as number)) / pitch;
  const offs = first.map((one) => {
    const off = sixteenths + one - inches * 16;
    return (off - 16 * Math.round(off / 16)) * Math.abs(pitch);
  });
  return offs.reduce((best, off) => (Math.abs(off) < Math.abs(best) ? off : best), Infinity);
};
