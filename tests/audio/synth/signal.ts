import { cos, exp, sin, stream } from './exact';

/** Sound as numbers from −1 to 1, one each 1/24000 s. Times are seconds, pitches hertz. */

/** Samples a second. What an MP3 of this size keeps of a sound ends under half of it. */
export const rate = 24_000;

export type Signal = Float64Array;

/** A value that may change with time. */
export type Course = number | ((seconds: number) => number);

const at = (course: Course, seconds: number): number =>
  typeof course === 'number' ? course : course(seconds);

export const samples = (seconds: number): number => Math.round(seconds * rate);

export const silence = (seconds: number): Signal => new Float64Array(samples(seconds));

/** A straight line through points of time and value; level before the first and after the last. */
export const through =
  (...points: readonly (readonly [number, number])[]) =>
  (seconds: number): number => {
    const next = points.findIndex(([time]) => time > seconds);
    if (next === 0) return points[0]?.[1] ?? 0;
    const from = points[(next < 0 ? points.length : next) - 1] ?? [0, 0];
    const to = next < 0 ? from : (points[next] ?? from);
    return to === from ? from[1] : from[1] + ((to[1] - from[1]) * (seconds - from[0])) / (to[0] - from[0]);
  };

/** Adds one signal to another from a time on; what does not fit is left out. */
export const add = (
  into: Signal,
  from: Signal,
  how: { readonly at?: number; readonly gain?: number } = {},
): void => {
  const start = samples(how.at ?? 0);
  const end = Math.min(from.length, into.length - start);
  for (let i = 0; i < end; i++) into[start + i] = (into[start + i] ?? 0) + (from[i] ?? 0) * (how.gain ?? 1);
};

/** A new signal, value by value. */
export const each = (signal: Signal, change: (value: number, seconds: number) => number): Signal =>
  signal.map((value, i) => change(value, i / rate));

export const shaped = (signal: Signal, course: Course): Signal =>
  each(signal, (value, seconds) => value * at(course, seconds));

/** White noise, the same for the same seed. */
export const noise = (seconds: number, seed: number): Signal => {
  const next = stream(seed);
  return silence(seconds).map(() => 2 * next() - 1);
};

/** Noise that comes up fast and dies away: `fall` is the time in which it falls to a third. */
export const burst = (
  seconds: number,
  seed: number,
  how: { readonly rise: number; readonly fall: number },
): Signal => shaped(noise(seconds, seed), (t) => (1 - exp(-t / how.rise)) * exp(-t / how.fall));

/** A force while two things touch: the longer they touch, the duller what rings. */
export const contact = (seconds: number, length: number): Signal =>
  each(silence(length), (_, t) => {
    if (t >= seconds) return 0;
    const s = sin((t / seconds) * Math.PI);
    return (s * s) / Math.max(1, (seconds * rate) / 2);
  });

/** One way a body rings: pitch, time in which it dies away by 60 dB, strength. */
export type Mode = readonly [hz: number, seconds: number, gain: number];

/** What a body does when it is driven: the sum of its ways to ring, each one pole pair. */
export const rung = (driven: Signal, modes: readonly Mode[]): Signal => {
  const out = new Float64Array(driven.length);
  for (const [hz, seconds, gain] of modes) {
    const r = exp(-6.908 / (seconds * rate));
    const angle = (2 * Math.PI * hz) / rate;
    const [one, two, drive] = [2 * r * cos(angle), r * r, gain * sin(angle)];
    let [last, before] = [0, 0];
    for (let i = 0; i < driven.length; i++) {
      const now = drive * (driven[i] ?? 0) + one * last - two * before;
      out[i] = (out[i] ?? 0) + now;
      [before, last] = [last, now];
    }
  }
  return out;
};

type Weights = readonly [b0: number, b1: number, b2: number, a1: number, a2: number];

type Kind = 'low' | 'band' | 'high';

/** Second-order sections with the bilinear transform, scaled so that what passes keeps its height. */
const weightsOf = (kind: Kind, hz: number, q: number): Weights => {
  const angle = (2 * Math.PI * Math.min(hz, rate * 0.45)) / rate;
  const [c, alpha] = [cos(angle), sin(angle) / (2 * q)];
  const whole = 1 + alpha;
  const back = [(-2 * c) / whole, (1 - alpha) / whole] as const;
  if (kind === 'band') return [alpha / whole, 0, -alpha / whole, ...back];
  const side = (kind === 'low' ? 1 - c : 1 + c) / (2 * whole);
  return [side, kind === 'low' ? 2 * side : -2 * side, side, ...back];
};

/** How often a filter whose pitch moves takes it up anew, samples. */
const hop = 16;

const filtered = (kind: Kind, signal: Signal, how: { readonly hz: Course; readonly q: number }): Signal => {
  const out = new Float64Array(signal.length);
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  let [b0, b1, b2, a1, a2] = weightsOf(kind, at(how.hz, 0), how.q);
  for (let i = 0; i < signal.length; i++) {
    if (typeof how.hz !== 'number' && i % hop === 0)
      [b0, b1, b2, a1, a2] = weightsOf(kind, how.hz(i / rate), how.q);
    const x = signal[i] ?? 0;
    const y = b0 * x + b1 * x1 + b2 * x2 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    out[i] = y;
  }
  return out;
};

const flat = 0.7071;

export const low = (signal: Signal, hz: Course): Signal => filtered('low', signal, { hz, q: flat });
export const high = (signal: Signal, hz: Course): Signal => filtered('high', signal, { hz, q: flat });
export const band = (signal: Signal, hz: Course, q: number): Signal => filtered('band', signal, { hz, q });

/** Short pushes at a rate that may change, none quite on time nor quite as strong as the one before. */
export const pushes = (
  seconds: number,
  seed: number,
  { hz, uneven }: { readonly hz: Course; readonly uneven: number },
): Signal => {
  const out = silence(seconds);
  const next = stream(seed);
  for (let t = 0; t < seconds;) {
    const i = samples(t);
    if (i < out.length) out[i] = 1 - uneven * next();
    t += (1 + uneven * (next() - 0.5)) / Math.max(1, at(hz, t));
  }
  return out;
};

/** A swelling tone whose pitch may change. */
export const tone = (seconds: number, hz: Course): Signal => {
  let turns = 0;
  return each(silence(seconds), (_, t) => {
    turns += at(hz, t) / rate;
    return sin(2 * Math.PI * (turns - Math.floor(turns)));
  });
};
