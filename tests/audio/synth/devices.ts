import { stream } from './exact';
import {
  add,
  band,
  burst,
  contact,
  each,
  high,
  low,
  noise,
  pushes,
  rung,
  shaped,
  silence,
  through,
  tone,
  type Mode,
  type Signal,
} from './signal';

/** Air, steel and engine. */

/** One shot: the valve, the driver on the nail, the wood, the air let off, the piston back. */
export const nailer = (): Signal => {
  const seconds = 0.4;
  const out = silence(seconds);
  add(
    out,
    rung(contact(0.0004, 0.1), [
      [3100, 0.02, 0.5],
      [5200, 0.015, 0.4],
    ]),
    { gain: 0.3 },
  );
  const body: readonly Mode[] = [
    [92, 0.14, 1.2],
    [168, 0.12, 1],
    [395, 0.08, 0.9],
    [760, 0.05, 0.8],
    [1350, 0.035, 0.7],
    [2600, 0.025, 0.5],
  ];
  add(out, rung(contact(0.001, 0.38), body), { at: 0.009, gain: 1.1 });
  add(out, band(burst(0.38, 211, { rise: 0.0004, fall: 0.016 }), 1500, 0.4), { at: 0.009, gain: 1.3 });
  const air = high(burst(0.37, 212, { rise: 0.008, fall: 0.062 }), 2400);
  add(out, band(air, through([0, 5200], [0.3, 3600]), 0.5), { at: 0.02, gain: 0.55 });
  add(
    out,
    rung(contact(0.0008, 0.2), [
      [540, 0.04, 1],
      [1850, 0.03, 0.6],
    ]),
    { at: 0.085, gain: 0.3 },
  );
  return out;
};

/** The bubble comes to rest: a small round blip against glass. Very quiet. */
export const tick = (): Signal => {
  const blip = shaped(tone(0.12, through([0, 1250], [0.035, 1900])), through([0, 0], [0.006, 1], [0.045, 0]));
  add(
    blip,
    rung(contact(0.0005, 0.1), [
      [2900, 0.035, 0.5],
      [4450, 0.025, 0.3],
    ]),
    { at: 0.028, gain: 0.6 },
  );
  return blip;
};

/** A thin steel or a straight board laid against wood. */
export const lay = (): Signal => {
  const out = silence(0.28);
  const steel: readonly Mode[] = [
    [1530, 0.1, 0.5],
    [2720, 0.08, 0.4],
    [4900, 0.06, 0.25],
    [385, 0.05, 0.9],
    [790, 0.04, 0.6],
  ];
  add(out, rung(contact(0.0012, 0.28), steel));
  add(out, rung(contact(0.0012, 0.2), steel), { at: 0.042, gain: 0.45 });
  return out;
};

/** A gate of spring steel snaps shut. */
export const clip = (): Signal => {
  const out = silence(0.26);
  const gate: readonly Mode[] = [
    [2410, 0.07, 0.7],
    [3930, 0.08, 0.6],
    [6150, 0.05, 0.4],
    [980, 0.03, 0.5],
  ];
  add(out, rung(contact(0.0005, 0.15), gate), { gain: 0.4 });
  add(out, rung(contact(0.0004, 0.2), gate), { at: 0.075 });
  return out;
};

/** Links that touch: each a little different from the last. */
const clinks = (
  seconds: number,
  seed: number,
  times: readonly (readonly [at: number, gain: number])[],
): Signal => {
  const out = silence(seconds);
  const next = stream(seed);
  for (const [at, gain] of times) {
    const off = 0.85 + 0.35 * next();
    const modes: readonly Mode[] = [
      [1420 * off, 0.06, 0.5],
      [2350 * off, 0.07, 0.7],
      [3870 * off * (0.96 + 0.08 * next()), 0.06, 0.5],
      [5900 * off, 0.04, 0.3],
    ];
    add(out, rung(contact(0.0004 + 0.0003 * next(), Math.min(0.25, seconds - at)), modes), { at, gain });
  }
  return out;
};

/** A chain is laid round and hooked. */
export const chain = (): Signal => {
  const next = stream(221);
  const times = Array.from(
    { length: 15 },
    (_, i) => [0.034 * i + 0.034 * next(), 0.25 + 0.6 * next() * next()] as const,
  );
  const out = clinks(0.85, 222, times);
  add(
    out,
    rung(contact(0.0007, 0.25), [
      [690, 0.08, 1],
      [1730, 0.1, 0.8],
      [3120, 0.08, 0.6],
    ]),
    { at: 0.6, gain: 0.9 },
  );
  return out;
};

/** The load is off: a thump in the hook, then link after link hangs down, slower and softer. */
export const slack = (): Signal => {
  const times: (readonly [number, number])[] = [];
  let [time, gap, gain] = [0.06, 0.022, 0.8];
  while (time < 0.85) {
    times.push([time, gain]);
    time += gap;
    gap *= 1.16;
    gain *= 0.86;
  }
  const out = clinks(1, 231, times);
  add(
    out,
    rung(contact(0.003, 0.4), [
      [118, 0.16, 1],
      [240, 0.12, 0.8],
      [610, 0.07, 0.5],
    ]),
    { gain: 0.9 },
  );
  return out;
};

/** A diesel: each firing shakes the frame and blows through the pipe. */
const engine = (seconds: number, seed: number, hz: (t: number) => number): Signal => {
  const firing = pushes(seconds, seed, { hz, uneven: 0.12 });
  const out = rung(firing, [
    [64, 0.15, 0.7],
    [98, 0.13, 0.8],
    [147, 0.1, 0.8],
    [236, 0.05, 0.7],
    [412, 0.035, 0.55],
    [870, 0.02, 0.35],
    [1750, 0.012, 0.2],
  ]);
  let blown = 0;
  const breath = low(noise(seconds, seed + 1), 900).map((value, i) => {
    blown = Math.max(blown * 0.9975, firing[i] ?? 0);
    return value * blown;
  });
  add(out, breath, { gain: 0.9 });
  return out;
};

const comesAndGoes = (seconds: number): ((t: number) => number) =>
  through([0, 0], [0.16, 1], [seconds - 0.3, 1], [seconds, 0]);

/** The machine works: revs come up under the load, the pump whines. */
export const lift = (): Signal => {
  const seconds = 1.5;
  const out = engine(seconds, 241, through([0, 24], [0.3, 33], [1.2, 35], [seconds, 25]));
  const whine = through([0, 240], [0.3, 372], [1.15, 392], [seconds, 250]);
  const teeth = tone(seconds, whine);
  add(
    teeth,
    tone(seconds, (t) => 2 * whine(t)),
    { gain: 0.5 },
  );
  add(
    teeth,
    tone(seconds, (t) => 3.02 * whine(t)),
    { gain: 0.25 },
  );
  add(out, shaped(teeth, through([0, 0], [0.3, 0.28], [1.15, 0.3], [1.4, 0])));
  return shaped(out, comesAndGoes(seconds));
};

/** The machine waits. */
export const idle = (): Signal => {
  const seconds = 1.15;
  const knocking = engine(seconds, 251, () => 23);
  return shaped(
    each(knocking, (value) => value * 0.8),
    comesAndGoes(seconds),
  );
};
