import type { SoundName } from '../../../src/present/sounds';
import * as devices from './devices';
import { exp } from './exact';
import { finished } from './finish';
import * as rubbed from './rubbed';
import { samples, type Signal } from './signal';
import * as struck from './struck';

/** Every sound and how loud it is to be, decibels under full scale. */

type Row = readonly [make: () => Signal, loud: number];

const rows: Readonly<Record<SoundName, Row>> = {
  hammer: [struck.hammer, -17],
  nailer: [devices.nailer, -15],
  creak: [rubbed.creak, -19],
  saw: [rubbed.saw, -19],
  plane: [rubbed.plane, -21],
  chalk: [rubbed.chalk, -18],
  string: [rubbed.string, -20],
  tape: [rubbed.tape, -20],
  tick: [devices.tick, -32],
  lay: [devices.lay, -24],
  pencil: [rubbed.pencil, -26],
  rafter: [struck.rafter, -16],
  block: [struck.block, -18],
  ridge: [struck.ridge, -15],
  brace: [struck.brace, -17],
  knock: [struck.knock, -17],
  ladder: [struck.ladder, -19],
  steps: [struck.steps, -20],
  clip: [devices.clip, -22],
  chain: [devices.chain, -21],
  lift: [devices.lift, -19],
  idle: [devices.idle, -22],
  slack: [devices.slack, -20],
  no: [struck.no, -20],
  stop: [struck.stop, -16],
  fall: [struck.fall, -14],
};

/** Every sound by itself, as it is kept. */
export const everySound = (): ReadonlyMap<SoundName, Signal> =>
  new Map(
    (Object.entries(rows) as [SoundName, Row][]).map(([name, [make, loud]]) => [
      name,
      finished(make(), exp((loud / 20) * Math.LN10)),
    ]),
  );

/** Quiet between two sounds of the sprite, seconds: what an encoder smears and a decoder shifts stays inside it. */
export const gap = 0.1;

/** All sounds on one strip, and where each begins and how long it is, seconds. */
export const sprite = (): {
  readonly strip: Signal;
  readonly places: ReadonlyMap<SoundName, { readonly from: number; readonly long: number }>;
} => {
  const sounds = everySound();
  const places = new Map<SoundName, { from: number; long: number }>();
  const whole = [...sounds.values()].reduce((sum, { length }) => sum + length + samples(gap), samples(gap));
  const strip = new Float64Array(whole);
  let at = samples(gap);
  for (const [name, signal] of sounds) {
    strip.set(signal, at);
    places.set(name, { from: at / samples(1), long: signal.length / samples(1) });
    at += signal.length + samples(gap);
  }
  return { strip, places };
};
