import { stream } from './exact';
import {
  add,
  band,
  burst,
  contact,
  low,
  pushes,
  rung,
  shaped,
  silence,
  through,
  type Mode,
  type Signal,
} from './signal';

/** Things that hit other things. */

/** A free bar bends at these multiples of its lowest pitch. */
const barSteps = [1, 2.756, 5.404, 8.933, 13.34] as const;

type Bar = {
  /** Lowest pitch; long boards are low. */
  readonly hz: number;
  /** How long the lowest rings; the others less. */
  readonly rings: number;
  /** How long it touches what it lands on: wide faces take longer. */
  readonly touches: number;
};

const barModes = ({ hz, rings }: Bar): readonly Mode[] =>
  barSteps
    .map((step, i): Mode => [hz * step, rings / (1 + 0.55 * i), 1 / (1 + 0.5 * i)])
    .filter(([pitch]) => pitch < 9000);

/** One landing of a board, with the rustle of the faces. */
const landing = (seconds: number, bar: Bar, seed: number): Signal => {
  const out = rung(contact(bar.touches, seconds), barModes(bar));
  add(out, band(burst(seconds, seed, { rise: 0.001, fall: 0.018 }), 900, 0.6), { gain: 0.25 });
  return out;
};

/** A board comes down, jumps once or twice and lies. */
const board = (seconds: number, bar: Bar, seed: number): Signal => {
  const out = silence(seconds);
  const next = stream(seed);
  let [time, gain, gap] = [0, 1, 0.075 + bar.touches * 12];
  for (let hit = 0; hit < 4; hit++) {
    const tilted = { ...bar, hz: bar.hz * (0.97 + 0.06 * next()) };
    add(out, landing(seconds - time, tilted, seed + hit), { at: time, gain });
    time += gap;
    gain *= 0.4;
    gap *= 0.62;
    if (time > seconds - 0.06) break;
  }
  return out;
};

const bars = {
  rafter: { hz: 118, rings: 0.34, touches: 0.0022 },
  block: { hz: 415, rings: 0.11, touches: 0.0011 },
  ridge: { hz: 71, rings: 0.55, touches: 0.0032 },
  stud: { hz: 168, rings: 0.17, touches: 0.0017 },
} as const;

export const rafter = (): Signal => board(0.62, bars.rafter, 11);
export const block = (): Signal => board(0.36, bars.block, 12);
export const ridge = (): Signal => board(0.95, bars.ridge, 13);

/** Steel on the head of a nail in softwood. `home` from 0, the nail stands out, to 1, its head is on the wood. */
const blow = (home: number, seed: number): Signal => {
  const seconds = 0.24;
  const shorter = 1 + 0.16 * home;
  const out = rung(contact(0.00022, seconds), [
    [2280 * shorter, 0.08, 1.5 - 0.8 * home],
    [3950, 0.1, 1.3],
    [5650, 0.07, 1],
    [8100, 0.04, 0.6],
  ]);
  const wood = rung(contact(0.0013, seconds), [
    [215, 0.13, 1 + 0.5 * home],
    [395, 0.1, 0.9],
    [660, 0.08, 0.8],
    [1060, 0.055, 0.65],
    [1690, 0.035, 0.5],
  ]);
  add(out, wood, { gain: 1.5 });
  add(out, band(burst(seconds, seed, { rise: 0.0003, fall: 0.006 }), 2600, 0.5), { gain: 0.6 });
  return out;
};

/** One nail: set, driven, driven home. */
export const hammer = (): Signal => {
  const out = silence(0.78);
  add(out, blow(0, 21), { gain: 0.55 });
  add(out, blow(0.5, 22), { at: 0.25, gain: 0.85 });
  add(out, blow(1, 23), { at: 0.51 });
  return out;
};

/** A board is slapped against two others and caught with two quick blows. */
export const brace = (): Signal => {
  const out = silence(0.95);
  add(out, landing(0.5, bars.stud, 31), { gain: 0.8 });
  add(out, landing(0.4, { ...bars.stud, hz: 181 }, 32), { at: 0.13, gain: 0.5 });
  add(out, blow(0.4, 33), { at: 0.42, gain: 0.75 });
  add(out, blow(1, 34), { at: 0.66, gain: 0.9 });
  return out;
};

/** A post is knocked under: the tighter it stands, the higher it sounds. */
export const knock = (): Signal => {
  const out = silence(0.85);
  [1, 1.17, 1.33].forEach((tight, i) => {
    const hit = rung(contact(0.0018, 0.3), [
      [196 * tight, 0.16, 1],
      [372 * tight, 0.12, 0.7],
      [610 * tight, 0.09, 0.5],
      [1010 * tight, 0.05, 0.3],
    ]);
    add(hit, band(burst(0.3, 41 + i, { rise: 0.0005, fall: 0.008 }), 1500, 0.6), { gain: 0.3 });
    add(out, hit, { at: 0.26 * i, gain: 0.75 + 0.12 * i });
  });
  return out;
};

/** A boot: heel, then sole. */
const boot = (seconds: number, modes: readonly Mode[], seed: number): Signal => {
  const out = rung(contact(0.006, seconds), modes);
  add(out, rung(contact(0.009, seconds - 0.05), modes), { at: 0.05, gain: 0.5 });
  add(out, low(burst(seconds, seed, { rise: 0.003, fall: 0.03 }), 1400), { gain: 0.09 });
  return out;
};

export const ladder = (): Signal => {
  const out = silence(0.75);
  const rung1: readonly Mode[] = [
    [112, 0.12, 1],
    [205, 0.1, 0.8],
    [540, 0.08, 1.6],
    [985, 0.07, 1.8],
    [1630, 0.05, 1.5],
  ];
  const rattle = (at: number, gain: number): void =>
    add(
      out,
      rung(contact(0.0006, 0.2), [
        [1240, 0.06, 1],
        [2110, 0.05, 0.8],
        [3370, 0.03, 0.5],
      ]),
      { at, gain },
    );
  add(out, boot(0.3, rung1, 51));
  rattle(0.07, 0.16);
  rattle(0.115, 0.08);
  add(
    out,
    boot(
      0.3,
      rung1.map(([hz, s, g]): Mode => [hz * 1.06, s, g]),
      52,
    ),
    { at: 0.36, gain: 0.9 },
  );
  rattle(0.43, 0.14);
  return out;
};

/** Boots on planks. */
export const steps = (): Signal => {
  const out = silence(0.7);
  const planks: readonly Mode[] = [
    [98, 0.17, 1],
    [178, 0.13, 0.9],
    [297, 0.09, 0.8],
    [520, 0.06, 0.7],
  ];
  add(out, boot(0.32, planks, 61));
  add(
    out,
    boot(
      0.32,
      planks.map(([hz, s, g]): Mode => [hz * 0.94, s, g]),
      62,
    ),
    { at: 0.35, gain: 0.85 },
  );
  return out;
};

const heavy: readonly Mode[] = [
  [128, 0.2, 1],
  [207, 0.16, 0.9],
  [331, 0.11, 0.8],
  [498, 0.08, 0.7],
  [762, 0.06, 0.6],
  [1140, 0.035, 0.4],
];

/** Two plain knocks on a thick timber: stop. */
export const stop = (): Signal => {
  const out = silence(0.55);
  add(out, rung(contact(0.004, 0.3), heavy));
  add(out, rung(contact(0.004, 0.3), heavy), { at: 0.2 });
  return out;
};

/** One dull tap: that does not go. */
export const no = (): Signal =>
  rung(contact(0.0045, 0.2), [
    [236, 0.09, 1],
    [402, 0.06, 0.7],
    [655, 0.04, 0.4],
  ]);

/** Lumber coming down: nails give, then board upon board, and it lies. */
export const fall = (): Signal => {
  const seconds = 2.3;
  const out = silence(seconds);
  const next = stream(71);
  const giving = rung(pushes(0.5, 72, { hz: through([0, 40], [0.5, 130]), uneven: 0.5 }), [
    [340, 0.05, 1],
    [720, 0.035, 0.8],
    [1350, 0.025, 0.5],
  ]);
  add(out, shaped(giving, through([0, 0], [0.2, 0.5], [0.45, 1], [0.5, 0])), { gain: 0.05 });
  for (let i = 0; i < 13; i++) {
    const time = 0.38 + 1.25 * (i / 13) * (0.75 + 0.4 * next());
    const bar: Bar = { hz: 66 + 150 * next() * next() + (i > 9 ? 120 : 0), rings: 0.3, touches: 0.0025 };
    add(out, board(Math.min(0.7, seconds - time), bar, 80 + i), {
      at: time,
      gain: (0.4 + 0.6 * next()) * (i > 9 ? 0.4 : 1),
    });
  }
  const rumble = low(burst(seconds - 0.4, 79, { rise: 0.12, fall: 0.42 }), 320);
  add(out, rumble, { at: 0.4, gain: 0.5 });
  return out;
};
