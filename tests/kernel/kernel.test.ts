import { afterEach, describe, expect, it } from 'vitest';
import type { Timber } from '../../src/core/roof/timber';
import {
  boxOf,
  contact,
  freeSolids,
  heightsAbovePlane,
  heldSolids,
  overlap,
  sizesInPlane,
  solidOf,
  volumeOf,
} from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** The measure itself, tried on pieces that anybody can figure by hand, before roofs are held against it. */

afterEach(freeSolids);

/** A stick 1½ by 4, 10 long, from x = 0, its lower edge at z = 0 and y = 0 in its middle. */
const stick: Timber = {
  id: 'stick',
  origin: [0, 0],
  direction: [1, 0],
  outline: [
    [0, 0],
    [10, 0],
    [10, 4],
    [0, 4],
  ],
  thickness: 1.5,
  cuts: [],
};

const near = (found: number, wanted: number, off = 1e-9): void =>
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThan(off);

const nearAll = (found: readonly number[], wanted: readonly number[], off = 1e-9): void => {
  expect(found).toHaveLength(wanted.length);
  wanted.forEach((value, i) => near(found[i]!, value, off));
};

const expectBox = (timber: Timber, min: readonly number[], max: readonly number[]): void => {
  const box = boxOf(solidOf(timber));
  nearAll(box.min, min);
  nearAll(box.max, max);
};

describe('a solid', () => {
  it('is its side times its thickness, in its place', () => {
    near(volumeOf(solidOf(stick)), 60);
    expectBox(stick, [0, -0.75, 0], [10, 0.75, 4]);
  });

  it('lies along its direction, half to each hand', () => {
    expectBox({ ...stick, origin: [5, 7], direction: [0, 1] }, [4.25, 7, 0], [5.75, 17, 4]);
    expectBox({ ...stick, origin: [5, 7], direction: [-1, 0] }, [-5, 6.25, 0], [5, 7.75, 4]);
    expectBox(
      { ...stick, direction: [0.6, 0.8] },
      [-0.75 * 0.8, -0.75 * 0.6, 0],
      [6 + 0.75 * 0.8, 8 + 0.75 * 0.6, 4],
    );
  });

  it('is the same whichever way round its side is told', () => {
    const back: Timber = { ...stick, outline: [...stick.outline].reverse() };
    near(volumeOf(solidOf(back)), 60);
    near(overlap(solidOf(stick), solidOf(back)), 60);
  });

  it('has its corners where they were told, to the last digits of a double', () => {
    const odd: Timber = {
      ...stick,
      origin: [200 / 3, -1 / 7],
      outline: [
        [100 / 3, 1 / 7],
        [1000 / 3, 1 / 7],
        [1000 / 3, 22 / 7],
        [100 / 3, 22 / 7],
      ],
    };
    near(volumeOf(solidOf(odd)), 300 * 3 * 1.5, 1e-10);
    const { min, max } = boxOf(solidOf(odd));
    nearAll([...min, ...max], [100, -1 / 7 - 0.75, 1 / 7, 400, -1 / 7 + 0.75, 22 / 7], 1e-12);
  });

  it('has a notch', () => {
    const notched: Timber = {
      ...stick,
      outline: [
        [0, 0],
        [2, 0],
        [2, 1],
        [5, 1],
        [5, 0],
        [10, 0],
        [10, 4],
        [0, 4],
      ],
    };
    near(volumeOf(solidOf(notched)), (40 - 3) * 1.5);
    // A peg as wide and high as the notch, which it must not touch, and a higher one, which it cuts.
    const peg = (high: number): Timber => ({
      ...stick,
      outline: [
        [2, 0],
        [5, 0],
        [5, high],
        [2, high],
      ],
    });
    near(overlap(solidOf(notched), solidOf(peg(1))), 0);
    near(overlap(solidOf(notched), solidOf(peg(1.25))), 3 * 0.25 * 1.5);
  });

  it('is refused when it is none', () => {
    expect(() => solidOf({ ...stick, direction: [1, 1] })).toThrow('direction');
    expect(() =>
      solidOf({
        ...stick,
        outline: [
          [0, 0],
          [1, 1],
          [2, 2],
        ],
      }),
    ).toThrow('no area');
  });
});

describe('a cut', () => {
  it('takes a miter off', () => {
    // Through the far end at 45° in plan: half of a square of the thickness goes.
    const mitered: Timber = { ...stick, cuts: [{ normal: [1, 1, 0], reach: 9.25 }] };
    near(volumeOf(solidOf(mitered)), 60 - (1.5 * 1.5 * 4) / 2);
    expectBox(mitered, [0, -0.75, 0], [10, 0.75, 4]);
  });

  it('leaves a wedge, however long its normal is', () => {
    // z ≤ 4 − 0.4 x.
    for (const k of [0.01, 1, 1000]) {
      const wedge: Timber = { ...stick, cuts: [{ normal: [0.4 * k, 0, k], reach: 4 * k }] };
      near(volumeOf(solidOf(wedge)), 30);
    }
  });

  it('goes through all three ways at once', () => {
    // A corner of 3, 1 and 2 off the far upper left: a sixth of the box it fits in.
    const nicked: Timber = { ...stick, cuts: [{ normal: [1 / 3, 1, 1 / 2], reach: 10 / 3 + 0.75 + 2 - 1 }] };
    near(volumeOf(solidOf(nicked)), 60 - (3 * 1 * 2) / 6);
  });

  it('takes nothing where it passes by, and all of it when it passes on the other side', () => {
    near(volumeOf(solidOf({ ...stick, cuts: [{ normal: [1, 0, 0], reach: 11 }] })), 60);
    near(volumeOf(solidOf({ ...stick, cuts: [{ normal: [1, 0, 0], reach: -1 }] })), 0);
  });
});

describe('two solids', () => {
  const at = (x: number, z: number): Timber => ({
    ...stick,
    id: `at ${x}`,
    origin: [x, 0],
    outline: stick.outline.map(([along, up]) => [along, up + z]),
  });

  it('overlap by what is in both', () => {
    near(overlap(solidOf(stick), solidOf(at(9, 3))), 1 * 1.5 * 1);
    near(overlap(solidOf(stick), solidOf({ ...stick, origin: [5, 0], direction: [0, 1] })), 1.5 * 0.75 * 4);
  });

  it('do not overlap where their faces meet, nor apart', () => {
    near(overlap(solidOf(stick), solidOf(at(10, 0))), 0);
    near(overlap(solidOf(stick), solidOf(at(0, 4))), 0);
    near(overlap(solidOf(stick), solidOf(at(30, 0))), 0);
  });

  it('are told with the share of the smaller, and only where boxes touch', () => {
    const small: Timber = {
      ...stick,
      id: 'small',
      origin: [9, 0],
      outline: [
        [0, 0],
        [2, 0],
        [2, 4],
        [0, 4],
      ],
    };
    const found = overlapsOf([stick, small, at(10, 0), at(30, 0)]);
    expect(found.map(({ pair }) => pair.join())).toEqual(['stick,small', 'stick,at 10', 'small,at 10']);
    nearAll(
      found.map(({ share }) => share),
      [0.5, 0, 0.5],
    );
    expect(clashesOf(found, 1e-6)).toHaveLength(2);
    expect(clashesOf(found, 0.6)).toEqual([]);
  });

  it('bear on each other with the area of their faces', () => {
    near(contact(solidOf(at(7, 4)), solidOf(stick), { toward: [0, 0, -1] }), 3 * 1.5);
    near(contact(solidOf(at(10, 1)), solidOf(stick), { toward: [-2, 0, 0] }), 3 * 1.5);
    near(contact(solidOf(at(7, 4)), solidOf(stick), { toward: [0, 0, 1] }), 0);
    near(contact(solidOf(at(7, 4.001)), solidOf(stick), { toward: [0, 0, -1] }), 0);
  });

  it('bear on a slope with all of it square to it, and with its level part from above', () => {
    // Falls 3 in 4 from z = 6 at x = 0; a stick lies on it from x = 2 to x = 6, so 5 along the slope.
    const ramp: Timber = {
      ...stick,
      outline: [
        [0, 0],
        [8, 0],
        [0, 6],
      ],
    };
    const upon: Timber = {
      ...stick,
      outline: [
        [2, 4.5],
        [6, 1.5],
        [6, 10],
        [2, 10],
      ],
    };
    const [a, b] = [solidOf(upon), solidOf(ramp)];
    near(overlap(a, b), 0);
    // A corner slides past the face it left by less than the push.
    near(contact(a, b, { toward: [-0.6, 0, -0.8] }), 5 * 1.5, 1e-3);
    near(contact(a, b, { toward: [0, 0, -1] }), 4 * 1.5, 1e-3);
    near(contact(a, b, { toward: [-1, 0, 0] }), 3 * 1.5, 1e-3);
  });
});

describe('heights above a plane', () => {
  const slope = { normal: [-0.3, 0.4, 1.2], reach: 500 } as const;

  it('are 0 all over a top that was cut to it, far from where the roof is counted from', () => {
    const far: Timber = {
      ...stick,
      origin: [1000 / 3, 700 / 7],
      direction: [0.6, -0.8],
      outline: [
        [0, 400],
        [120, 400],
        [120, 600],
        [0, 600],
      ],
      cuts: [slope],
    };
    const heights = heightsAbovePlane(far, slope);
    expect(heights).toHaveLength(4);
    for (const height of heights) near(height, 0, 1e-9);
  });

  it('are of the top only, out of the plane and inside of it', () => {
    const level = { normal: [0, 0, 2], reach: 7 } as const;
    nearAll(heightsAbovePlane(stick, level), [0.5, 0.5, 0.5, 0.5], 1e-6);
    // A top that climbs 1 in 10 under a level plane at 5.
    const climbing: Timber = {
      ...stick,
      outline: [
        [0, 0],
        [10, 0],
        [10, 4],
        [0, 3],
      ],
    };
    const heights = [...heightsAbovePlane(climbing, { normal: [0, 0, 1], reach: 5 })].sort((a, b) => a - b);
    nearAll(heights, [-2, -2, -1, -1], 1e-6);
  });

  it('are of the face of the two of a backed edge that looks the plane’s way', () => {
    const left = { normal: [0, -0.5, 1], reach: 4 } as const;
    const right = { normal: [0, 0.5, 1], reach: 4 } as const;
    const backed: Timber = { ...stick, cuts: [left, right] };
    for (const plane of [left, right])
      for (const height of heightsAbovePlane(backed, plane)) near(height, 0, 1e-9);
    expect(Math.max(...heightsAbovePlane(stick, left))).toBeCloseTo((0.5 * 0.75) / Math.sqrt(1.25), 6);
  });
});

describe('sizes in a plane', () => {
  it('are those of the stick that lies in it', () => {
    // A stick of 25 by 4 that falls 3 in 4, cut square.
    const sloping: Timber = {
      ...stick,
      direction: [0.6, 0.8],
      outline: [
        [0, 15],
        [20, 0],
        [22.4, 3.2],
        [2.4, 18.2],
      ],
    };
    nearAll(sizesInPlane(sloping, { normal: [0.75 * 0.6, 0.75 * 0.8, 1], reach: 3 }), [1.5, 25, 4]);
  });
});

describe('solids', () => {
  it('are let go of after each test', () => {
    expect(heldSolids()).toBe(0);
    const solid = solidOf(stick);
    overlapsOf([stick, { ...stick, id: 'other' }]);
    expect(heldSolids()).toBe(3);
    freeSolids();
    expect(heldSolids()).toBe(0);
    expect(() => volumeOf(solid)).toThrow('deleted');
  });
});
