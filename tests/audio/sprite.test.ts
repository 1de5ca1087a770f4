import { readFileSync } from 'node:fs';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { madeFrom, spriteTable } from '../../src/audio/spriteTable';
import { soundNames, type SoundName } from '../../src/present/sounds';
import { encoded, sixteenBits } from './encoded';
import { framesOf } from './frames';
import { gap, sprite } from './synth/everySound';
import { ceiling, peak, power } from './synth/finish';
import { rate, samples, type Signal } from './synth/signal';

/** The kept file, its table, and the code that makes both. */

const kept = readFileSync(new URL('../../assets/sounds/sprite.mp3', import.meta.url));
const { strip, places } = sprite();
const sounds = [...places].map(([name, { from, long }]): [SoundName, Signal] => [
  name,
  strip.slice(samples(from), samples(from) + samples(long)),
]);

describe('the file of sounds', () => {
  it('is what the code makes, to the byte', async () => {
    expect(bytesToHex(sha256(sixteenBits(strip)))).toBe(madeFrom);
    expect(Buffer.from(await encoded(strip)).equals(kept)).toBe(true);
  });

  it('comes out the same when it is made again', () => {
    expect(sixteenBits(sprite().strip)).toEqual(sixteenBits(strip));
  });

  it('is as long as its strip, in one channel, and small', () => {
    const { channels, hertz, samples: long } = framesOf(kept);
    expect([channels, hertz]).toEqual([1, rate]);
    // Encoder and decoder together add less than five frames of 576 samples.
    expect(long).toBeGreaterThanOrEqual(strip.length);
    expect(long).toBeLessThan(strip.length + 5 * 576);
    expect(kept.length).toBeLessThanOrEqual(120_000);
  });
});

describe('the table', () => {
  it('names every sound once, where the strip has it', () => {
    expect(Object.keys(spriteTable).sort()).toEqual([...soundNames].sort());
    for (const [name, { from, long }] of places) {
      const [at, lasts] = spriteTable[name];
      expect(Math.abs(at - 1000 * from)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(lasts - 1000 * long)).toBeLessThanOrEqual(0.5);
    }
  });

  it('leaves quiet between them', () => {
    const rows = Object.values(spriteTable).sort(([a], [b]) => a - b);
    rows.forEach(([from], i) => {
      const [before, long] = rows[i - 1] ?? [0, 0];
      expect(from - before - long).toBeGreaterThanOrEqual(1000 * gap - 1);
    });
    const [last, long] = rows.at(-1)!;
    expect((1000 * strip.length) / rate - last - long).toBeGreaterThanOrEqual(1000 * gap - 1);
  });
});

describe.each(sounds)('%s', (name, signal) => {
  it('keeps under 3 dB below full scale, without offset, and begins and ends in quiet', () => {
    expect(peak(signal)).toBeLessThanOrEqual(ceiling);
    const mean = signal.reduce((sum, value) => sum + value, 0) / signal.length;
    expect(Math.abs(mean)).toBeLessThan(0.005);
    for (const value of [...signal.slice(0, 4), ...signal.slice(-4)])
      expect(Math.abs(value) / peak(signal)).toBeLessThan(0.01);
  });

  it('is as loud as its like: a bubble by far the quietest, lumber coming down the loudest', () => {
    const quiet = power(new Map(sounds).get('tick')!);
    const loud = power(new Map(sounds).get('fall')!);
    if (name !== 'tick') expect(power(signal)).toBeGreaterThan(3 * quiet);
    if (name !== 'fall') expect(power(signal)).toBeLessThan(loud);
  });
});
