import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Gable, Support } from '../../src/core/mechanics/gable';
import { forceOf, weightOf } from '../../src/core/mechanics/loadPath';
import type { Node } from '../../src/core/mechanics/frame';
import { alongBrace, bareGable, every, moved, oneSide, pairOf, settledGable, type Framed } from './testGable';

/** A ridge that carries as a beam: nobody tells the frame so, it has only a stiffer ridge and posts under it. */

const engineered = (depth: number) => ({ thickness: 3.5, depth });

const post = (x: number, i: number, more: Partial<Support> = {}): Support => ({
  ...{ name: `post.${i + 1}`, kind: 'post', x, high: 0, aside: 0, fixed: true, below: 97 },
  ...more,
});

/** Every pair nailed, no ties, on posts at these places. */
const onPosts = (length: number, places: readonly number[], depth = 11.875): Gable => {
  const gable = bareGable(length);
  return {
    ...gable,
    shape: { ...gable.shape, ridge: engineered(depth) },
    rafters: every(gable).flatMap((i) => pairOf(i)),
    braces: [alongBrace(gable)],
    supports: places.map((x, i) => post(x, i)),
  };
};

const spread = (length: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => 1.75 + (i * (length - 3.5)) / (count - 1));

/** What an eave wall holds back, outward, pounds. */
const thrust = ({ settled }: Framed): number =>
  forceOf(settled, ({ joint, ground }) => joint === 'wall.yard' && ground === 'y');

const postLoad = ({ settled }: Framed): number =>
  -forceOf(settled, ({ joint, what }) => joint.startsWith('post.') && what === 'up');

const lowest = ({ parts, settled }: Framed): number =>
  Math.max(...parts.ridge.map((node: Node) => -moved(node, settled).z));

const aside = ({ parts, settled }: Framed): number =>
  Math.max(...parts.ridge.map((node: Node) => Math.abs(moved(node, settled).y)));

describe('a ridge beam on its posts', () => {
  it('leaves little of the push on the walls that the same roof has without them, and sinks little', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 16 }), (bays) => {
        const length = bays * 24;
        const every8ft = spread(length, Math.ceil(length / 96) + 1);
        const [held, bare] = [every8ft, []].map((places) => settledGable(onPosts(length, places)));
        if (!held || !bare) throw new Error('no frame');
        expect(held.settled.falls).toBeUndefined();
        expect(thrust(held)).toBeGreaterThan(-1);
        expect(thrust(held)).toBeLessThan(0.25 * thrust(bare));
        expect(lowest(held)).toBeLessThan(0.25 * lowest(bare));
      }),
      { numRuns: 9 },
    );
  });

  it('takes half of what the rafters weigh between their ends, and its own weight', () => {
    const held = settledGable(onPosts(240, spread(240, 4)));
    // Tails beyond the heels never come to the ridge, and push their part of the rafter up there.
    const weight = weightOf(held.settled.frame);
    expect(postLoad(held)).toBeGreaterThan(0.35 * weight);
    expect(postLoad(held)).toBeLessThan(0.55 * weight);
  });

  it('sags between its posts by its stiffness, and the walls feel it', () => {
    const settled = [7.25, 9.25, 11.875, 16].map((depth) =>
      settledGable(onPosts(312, spread(312, 2), depth)),
    );
    for (const [i, deeper] of settled.slice(1).entries()) {
      const shallower = settled[i] as Framed;
      expect(lowest(deeper)).toBeLessThan(lowest(shallower));
      expect(thrust(deeper)).toBeLessThan(thrust(shallower));
    }
  });

  it('is let down where a post is missing or stands too low', () => {
    const places = spread(312, 3);
    const whole = onPosts(312, places);
    const low = { ...whole, supports: places.map((x, i) => post(x, i, i === 1 ? { high: -0.06 } : {})) };
    const missing = onPosts(312, [places[0] as number, places[2] as number]);
    const down = [whole, low, missing].map((gable) => lowest(settledGable(gable)));
    expect(down[1]).toBeGreaterThan(2 * (down[0] as number));
    expect(down[2]).toBeGreaterThan(4 * (down[0] as number));
  });

  it('is pushed over farther by one side where its posts are loose', () => {
    const gable = onPosts(312, spread(312, 3));
    const half = { ...gable, rafters: oneSide(gable) };
    const loose = { ...half, supports: half.supports.map((one) => ({ ...one, fixed: false })) };
    expect(aside(settledGable(loose))).toBeGreaterThan(1.5 * aside(settledGable(half)));
  });

  it('is the safer from going over, the less its loaded posts lean for their height', () => {
    const falls = (below: number, loadFactor: number): boolean => {
      const gable = { ...onPosts(312, spread(312, 3)), braces: [] };
      const supports = gable.supports.map((one) => ({ ...one, below, fixed: false }));
      return settledGable({ ...gable, supports }, { loadFactor }).settled.falls !== undefined;
    };
    const factor = (below: number): number =>
      Array.from({ length: 60 }, (_, i) => 1 + i).find((f) => falls(below, f)) ?? Infinity;
    expect(factor(97)).toBeGreaterThan(factor(0));
    expect(factor(97)).toBeLessThan(Infinity);
  });
});
