import { cos } from './exact';
import { high, rate, samples, type Signal } from './signal';

/** From what was made to what is kept: no offset, quiet edges, as loud as it should be. */

/** The highest any sample may be: 3 dB under full scale, so that what encoding adds does not clip. */
export const ceiling = 0.7079;

/** Over how long loudness is judged, seconds: about what an ear adds up. */
const earTime = 0.1;

const inStep = 0.0015;
const outStep = 0.04;

/** Mean square of the loudest stretch. */
export const power = (signal: Signal): number => {
  const span = Math.min(samples(earTime), signal.length);
  let [sum, most] = [0, 0];
  for (let i = 0; i < signal.length; i++) {
    const [now, left] = [signal[i] ?? 0, i >= span ? (signal[i - span] ?? 0) : 0];
    sum += now * now - left * left;
    most = Math.max(most, sum / span);
  }
  return most;
};

export const peak = (signal: Signal): number =>
  signal.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** Bends peaks under the ceiling; leaves what is well under it as it is. */
const held = (value: number): number => {
  const part = value / ceiling;
  const square = part * part;
  return value / Math.sqrt(Math.sqrt(1 + square * square));
};

const edged = (signal: Signal): Signal => {
  const length = signal.length / rate;
  return signal.map((value, i) => {
    const [from, to] = [i / rate / inStep, (length - (i + 1) / rate) / outStep];
    const edge = Math.min(1, from, to);
    return value * 0.5 * (1 - cos(Math.PI * edge));
  });
};

/** Where a sound has died away by 56 dB it ends. */
const gone = 0.0016;

/** Without the quiet at its end. */
const trimmed = (signal: Signal): Signal => {
  const least = gone * peak(signal);
  const last = signal.findLastIndex((value) => Math.abs(value) > least);
  return signal.slice(0, Math.min(signal.length, last + samples(outStep)));
};

/** How far a peak may be over the ceiling before it is bent: more would be heard as rasp. */
const mostOver = 1.4;

/** Made as loud as `target`, a root mean square of the loudest stretch, as far as its peaks allow. */
export const finished = (made: Signal, target: number): Signal => {
  const clean = edged(trimmed(high(made, 45)));
  const most = (ceiling * mostOver) / peak(clean);
  let gain = Math.min(most, target / Math.sqrt(power(clean)));
  // Bending takes a little away: a few rounds bring it back.
  for (let i = 0; i < 4; i++) {
    const now = Math.sqrt(power(clean.map((value) => held(value * gain))));
    gain = Math.min(most, (gain * target) / now);
  }
  return clean.map((value) => held(value * gain));
};
