import { stream, wave } from './exact';
import {
  add,
  band,
  burst,
  contact,
  high,
  low,
  noise,
  pushes,
  rung,
  samples,
  shaped,
  silence,
  through,
  type Signal,
} from './signal';

/** Things that are drawn over or through other things. */

/** A stroke of a hand: it starts, is fastest in the middle, and ends. */
const stroke = (t: number, seconds: number): number => {
  if (t < 0 || t > seconds) return 0;
  return wave(t / seconds / 2);
};

/** A nail out of wood: it sticks and slips, faster as it comes, in two pulls on the bar; then it is out. */
export const creak = (): Signal => {
  const seconds = 1.05;
  const hz = through([0, 46], [0.34, 150], [0.42, 60], [0.82, 240]);
  const slips = pushes(0.84, 111, { hz, uneven: 0.3 });
  const groan = rung(slips, [
    [274, 0.05, 0.7],
    [655, 0.045, 1],
    [1190, 0.035, 0.9],
    [1975, 0.025, 0.6],
    [3180, 0.016, 0.35],
  ]);
  const out = silence(seconds);
  const pulls = through([0, 0], [0.1, 0.6], [0.34, 1], [0.4, 0.12], [0.5, 0.7], [0.78, 1], [0.83, 0]);
  add(out, shaped(groan, pulls), { gain: 0.35 });
  const free = rung(contact(0.001, 0.2), [
    [430, 0.06, 1],
    [4120, 0.12, 0.5],
    [6740, 0.09, 0.3],
  ]);
  add(out, free, { at: 0.83, gain: 0.9 });
  return out;
};

/** Teeth through wood, there with force and back with less; then the offcut drops. */
export const saw = (): Signal => {
  const seconds = 1.5;
  const out = silence(seconds);
  const strokes = [0, 0.44, 0.86].flatMap((from) => [
    { from, long: 0.24, gain: 1, base: 1750 },
    { from: from + 0.24, long: 0.18, gain: 0.4, base: 2350 },
  ]);
  for (const [i, { from, long, gain, base }] of strokes.entries()) {
    const dust = noise(long, 121 + i);
    const speed = (t: number): number => stroke(t, long);
    // Teeth go by as fast as the hand moves: nine to the inch.
    let turns = 0;
    const teeth = dust.map((value, n) => {
      turns += (330 * speed(n / samples(1))) / samples(1);
      const bite = turns - Math.floor(turns);
      return value * (0.35 + 0.65 * bite * bite);
    });
    const cut = band(teeth, (t) => base + 1500 * speed(t), 0.9);
    add(cut, band(teeth, 5200, 1.2), { gain: 0.5 });
    add(
      cut,
      rung(teeth, [
        [236, 0.03, 0.03],
        [455, 0.025, 0.03],
        [880, 0.02, 0.03],
      ]),
    );
    add(
      out,
      shaped(cut, (t) => speed(t) * gain),
      { at: from },
    );
  }
  const offcut = rung(contact(0.0012, 0.2), [
    [520, 0.07, 1],
    [1390, 0.04, 0.6],
    [2700, 0.025, 0.3],
  ]);
  add(out, offcut, { at: 1.32, gain: 0.7 });
  return out;
};

/** An iron takes off one long shaving. */
export const plane = (): Signal => {
  const long = 0.55;
  const chips = pushes(long, 131, { hz: 420, uneven: 0.9 });
  const hiss = band(noise(long, 132), through([0, 1700], [long, 3300]), 1.1);
  const out = shaped(hiss, (t) => stroke(t, long));
  add(
    out,
    shaped(
      rung(chips, [
        [1250, 0.012, 0.3],
        [2900, 0.008, 0.25],
        [410, 0.02, 0.2],
      ]),
      (t) => stroke(t, long),
    ),
  );
  return out;
};

/** Two short strokes of a pencil on sawn wood: the grain breaks them up. */
export const pencil = (): Signal => {
  const out = silence(0.4);
  for (const [from, long, seed] of [
    [0, 0.15, 141],
    [0.2, 0.17, 142],
  ] as const) {
    const next = stream(seed);
    let [held, grain] = [0, 1];
    const rough = noise(long, seed).map((value) => {
      if (held-- <= 0) [held, grain] = [samples(0.002 + 0.005 * next()), 0.2 + 0.8 * next()];
      return value * grain;
    });
    const scratch = high(band(rough, through([0, 2900], [long, 3900]), 0.8), 1600);
    add(
      out,
      shaped(scratch, (t) => stroke(t, long)),
      { at: from },
    );
  }
  return out;
};

/** A blade of spring steel: it buzzes as it bends, and is heard through its case. */
const blade = (
  long: number,
  seed: number,
  how: { readonly pitch: (t: number) => number; readonly flutter: (t: number) => number },
): Signal => {
  const kinks = pushes(long, seed, { hz: how.flutter, uneven: 0.5 });
  const out = rung(kinks, [
    [2300, 0.03, 0.5],
    [3650, 0.025, 0.45],
    [5900, 0.018, 0.3],
    [920, 0.03, 0.3],
  ]);
  add(out, band(noise(long, seed + 1), how.pitch, 1.6), { gain: 0.42 });
  add(
    out,
    band(noise(long, seed + 2), (t) => 1.9 * how.pitch(t), 2),
    { gain: 0.22 },
  );
  return out;
};

/** The tape runs out, stands, and runs home into its case. */
export const tape = (): Signal => {
  const out = silence(1.3);
  const outward = blade(0.46, 151, {
    pitch: through([0, 2500], [0.46, 3300]),
    flutter: through([0, 26], [0.46, 48]),
  });
  add(out, shaped(outward, through([0, 0], [0.06, 0.5], [0.3, 0.75], [0.43, 0.6], [0.46, 0])));
  add(
    out,
    rung(contact(0.0005, 0.1), [
      [1850, 0.03, 1],
      [3400, 0.03, 0.7],
    ]),
    { at: 0.47, gain: 0.5 },
  );
  const home = blade(0.42, 154, {
    pitch: through([0, 2600], [0.42, 5600]),
    flutter: through([0, 45], [0.42, 110]),
  });
  add(out, shaped(home, through([0, 0], [0.05, 0.5], [0.38, 1.1], [0.42, 0.3])), { at: 0.68 });
  const hook = rung(contact(0.0005, 0.19), [
    [710, 0.06, 1.2],
    [1260, 0.045, 1],
    [2920, 0.06, 0.9],
    [4700, 0.05, 0.7],
    [7300, 0.03, 0.4],
  ]);
  add(out, hook, { at: 1.1, gain: 1.3 });
  return out;
};

/** Line slapped on wood: a short thick twang and a puff of dust. */
export const chalk = (): Signal => {
  const out = silence(0.42);
  const twang = Array.from({ length: 12 }, (_, i): readonly [number, number, number] => [
    88 * (i + 1),
    0.22 / (1 + 0.35 * i),
    0.9 / (1 + 0.3 * i),
  ]);
  add(out, rung(contact(0.0008, 0.42), twang), { gain: 0.8 });
  add(
    out,
    rung(contact(0.0006, 0.3), [
      [310, 0.05, 1],
      [640, 0.04, 0.9],
      [1300, 0.03, 0.8],
      [2500, 0.02, 0.6],
    ]),
    { at: 0.012, gain: 1.1 },
  );
  add(out, high(burst(0.3, 161, { rise: 0.0004, fall: 0.005 }), 1800), { at: 0.012, gain: 0.4 });
  add(out, low(burst(0.38, 162, { rise: 0.02, fall: 0.09 }), 1500), { at: 0.02, gain: 0.1 });
  return out;
};

/** A string pulled taut: its pitch climbs while it is drawn, then it is plucked and hums. */
export const string = (): Signal => {
  const seconds = 1.25;
  const out = silence(seconds);
  const pull = 0.48;
  const climb = through([0, 58], [pull, 110], [seconds, 110]);
  for (let n = 1; n <= 12; n++) {
    let turns = 0;
    const part = silence(seconds).map((_, i) => {
      const t = i / samples(1);
      turns += (n * climb(t) * (1 + 0.00025 * n * n)) / samples(1);
      const drawn = t < pull ? (0.16 * t) / pull : 0.16 * Math.max(0, 1 - (t - pull) / 0.1);
      const since = t - pull;
      const fade = since < 0 ? 0 : Math.min(1, since / 0.002) / (1 + since * (5 + 2.2 * n) * (1 + since * 6));
      return wave(turns - Math.floor(turns)) * (drawn + fade);
    });
    // Plucked near a third of its length: some partials stay away.
    const share = Math.abs(wave(n * 0.155)) / n;
    add(out, part, { gain: share + (n < 4 ? 0 : 0.06 / n) });
  }
  const rub = band(noise(pull, 171), through([0, 700], [pull, 1500]), 1.5);
  add(out, shaped(rub, through([0, 0], [0.3, 0.1], [pull, 0])));
  add(
    out,
    rung(contact(0.0008, 0.1), [
      [620, 0.03, 0.5],
      [1480, 0.02, 0.4],
    ]),
    { at: pull, gain: 0.6 },
  );
  return out;
};
