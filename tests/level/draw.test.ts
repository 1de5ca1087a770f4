import { describe, expect, it } from 'vitest';
import { murmur3, spread, uniform } from '../../src/core/level/draw';

describe('the integer generator', () => {
  // Published test vectors for MurmurHash3 x86 32 bit (the SMHasher project's author's values as reprinted in reference
  // implementations; quoted from memory, and confirmed by the four agreeing).
  it.each([
    ['', 0, 0],
    ['', 1, 0x514e28b7],
    ['Hello, world!', 0x9747b28c, 0x24884cba],
    ['The quick brown fox jumps over the lazy dog', 0x9747b28c, 0x2fa826cd],
    ['abc', 0, 0xb3dd93fa],
    ['a', 0x9747b28c, 0x7fa09ea6],
    ['aaaa', 0x9747b28c, 0x5a97808a],
  ])('hashes %j with seed %i', (text, seed, hash) => {
    expect(murmur3(text, seed)).toBe(hash);
  });

  it('draws evenly and independently by place', () => {
    const draws = Array.from({ length: 4000 }, (_, i) => uniform(7, `board.${i}`, 'long'));
    const mean = draws.reduce((a, b) => a + b, 0) / draws.length;
    // Standard error of the mean of 4000 even draws is 0.0046; five of them.
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.023);
    expect(new Set(draws).size).toBeGreaterThan(3990);
  });

  it('keeps a bell draw inside its range and centered', () => {
    const draws = Array.from({ length: 4000 }, (_, i) =>
      spread({ seed: 3, place: `board.${i}`, purpose: 'x' }, 0.25),
    );
    expect(Math.max(...draws.map(Math.abs))).toBeLessThan(0.25);
    expect(Math.abs(draws.reduce((a, b) => a + b, 0) / draws.length)).toBeLessThan(0.25 * 0.03);
  });

  it('shifts nothing when another place is drawn first', () => {
    const alone = uniform(9, 'plate.yard.B', 'height');
    uniform(9, 'plate.yard.A', 'height');
    expect(uniform(9, 'plate.yard.B', 'height')).toBe(alone);
  });
});
