import { describe, expect, it } from 'vitest';
import { upperStations } from '../../src/core/level/layout';
import type { Level } from '../../src/core/level/level';
import { planOf, rafterOf, roofOf } from './roofs';

describe('the sample roof: 288 by 312 in, 6 in 12, 2×8 at 24 in, 14 in overhang, 3 1/2 in seat', () => {
  it('has one kind of rafter, two to a station', () => {
    const { commonRafters, layout } = roofOf();
    expect(commonRafters).toHaveLength(1);
    expect(commonRafters[0]).toMatchObject({ id: 'common', side: 'both', count: 2 * layout.stations.length });
  });

  it.each([
    ['run', 144],
    ['rise', 72],
    ['lineLength', 160.997],
    ['shortening', 0.75],
    ['bodyLength', 160.158],
    ['tailLength', 15.652],
    ['edgeLength', 175.811],
    ['stockLength', 179.436],
    ['plumbCutLength', 8.106],
    ['seat', 3.5],
    ['heelCut', 1.75],
    ['heightAbovePlate', 6.356],
    ['notchDepth', 1.565],
    ['maxSeat', 4.053],
  ] as const)('%s is %f', (name, value) => {
    expect(rafterOf()[name]).toBeCloseTo(value, 3);
  });

  it('has its ridge where the top edges meet it', () => {
    const [ridge] = roofOf().ridges;
    expect(ridge?.topHeight).toBeCloseTo(77.981, 3);
    expect(ridge?.leastDepth).toBeCloseTo(8.106, 3);
    expect(ridge).toMatchObject({ lineLength: 312, length: 312, bearsFully: true, count: 1 });
  });

  it('is laid out from end A', () => {
    const inner = Array.from({ length: 12 }, (_, i) => 24 * (i + 1));
    expect(roofOf().layout).toEqual({ spacing: 24, datum: 'endA', stations: [0.75, ...inner, 311.25] });
  });

  it('has a block for each different bay, both eaves', () => {
    const { blocks } = roofOf();
    expect(blocks.map(({ length, count }) => [length, count])).toEqual([
      [21.6875, 4],
      [22.4375, 22],
    ]);
    for (const block of blocks) {
      expect(block.bevel.rise / block.bevel.run).toBe(0.5);
      expect(block.height).toBeCloseTo(6.356, 3);
      expect(block).not.toHaveProperty('vent');
    }
  });

  it('has joists from plate to plate and collars in the upper third', () => {
    const [joist, collar] = roofOf().ties;
    expect(joist).toMatchObject({ kind: 'joist', height: 0, length: 288, count: 14 });
    expect(joist?.clip).toBeCloseTo(7.25 - 6.3557, 3);
    expect(collar).toMatchObject({ kind: 'collar', clip: 0 });
    expect(collar?.height).toBeCloseTo((2 / 3) * 77.981, 2);
    expect(collar?.length).toBeCloseTo(2 * (144 + (6.3557 - (2 / 3) * 77.9807) * 2), 2);
  });

  it('stops joists behind the blocks of both walls, by the allowance that these have', () => {
    const [joist, collar] = roofOf().ties;
    // 1 1/2 in of block and 1/16 in at each end; the plane is half as much higher there.
    expect(joist?.behindBlocks?.length).toBeCloseTo(288 - 2 * 1.5625, 9);
    expect(joist?.behindBlocks?.clip).toBeCloseTo(7.25 - 6.3557 - 1.5625 / 2, 3);
    expect(collar).not.toHaveProperty('behindBlocks');
  });

  it('calls for no caution', () => {
    expect(roofOf().cautions).toEqual([]);
  });
});

describe('other plans', () => {
  it('runs the ridge past both gables', () => {
    expect(roofOf({ rakeOverhang: 12 }).ridges[0]).toMatchObject({ length: 336, lineLength: 336 });
    expect(roofOf({ rakeOverhang: 12 }).layout).toEqual(roofOf().layout);
  });

  it('has no tail where nothing hangs over', () => {
    expect(rafterOf({ overhang: 0 })).toMatchObject({ tailLength: 0 });
    expect(rafterOf({ overhang: 0 }).edgeLength).toBe(rafterOf().bodyLength);
  });

  it('measures from the sheathing where the plan says so, and keeps the plane of a seat as deep on the plate', () => {
    const clad = rafterOf({ reference: 'sheathing', seat: 4 });
    expect(clad.run).toBe(144.5);
    expect(clad.heelCut).toBe(2);
    expect(clad.heightAbovePlate).toBeCloseTo(8.1057 - 2, 3);
    // The plane rises 1/4 in over the half inch of sheathing: 6.1057 + 0.25 is the sample's 6.3557 at the plate.
    expect(roofOf({ reference: 'sheathing', seat: 4 }).ridges[0]?.topHeight).toBeCloseTo(77.981, 3);
    expect(roofOf({ reference: 'sheathing', seat: 4 }).ties[0]).toEqual(roofOf().ties[0]);
    expect(roofOf({ reference: 'sheathing', seat: 4 }).blocks[0]?.height).toBeCloseTo(6.356, 3);
  });

  it('ignores the sheathing where the plate is the reference', () => {
    expect(roofOf({ sheathing: 1 })).toEqual(roofOf());
  });

  it('stands blocks square to the rafters without a bevel, and lower', () => {
    const [block] = roofOf({ blockStands: 'square' }).blocks;
    expect(block?.bevel.rise).toBe(0);
    expect(block?.height).toBeCloseTo(6.3557 / Math.sqrt(1.25), 3);
  });

  it('shortens every block by its allowance', () => {
    expect(roofOf({ blockAllowance: 0 }).blocks.map(({ length }) => length)).toEqual([21.75, 22.5]);
  });

  it.each([
    [false, false, []],
    [{}, false, ['joist']],
    [false, { every: 3 }, ['collar']],
    [{ height: 12 }, {}, ['rafterTie', 'collar']],
  ])('joists %j and collars %j give %j', (joists, collars, kinds) => {
    expect(roofOf({ joists, collars }).ties.map(({ kind }) => kind)).toEqual(kinds);
  });

  it('ends a raised tie at the roof planes', () => {
    const [tie] = roofOf({ joists: { height: 20 } }).ties;
    expect(tie?.length).toBeCloseTo(2 * (144 + (6.355746 - 20) * 2), 4);
    expect(tie?.clip).toBe(0);
  });

  it('clips no corner that stays under the plane', () => {
    // 12 in 12 with a small seat: the rafter is 7.25·√2 − 1.5 = 8.753 over the plate, more than the joist is deep.
    expect(roofOf({ slope: { rise: 12, run: 12 }, seat: 1.5 }).ties[0]?.clip).toBe(0);
  });

  it.each([1, 2, 3, 5, 13, 14, 50])('ties every %i pairs and the last, as the site asks for', (every) => {
    const changes = { collars: { every }, joists: { every } };
    const { ties, layout } = roofOf(changes);
    const asked = upperStations({ plan: planOf(changes) } as Level);
    expect(ties.map(({ count }) => count)).toEqual([asked.length, asked.length]);
    expect(asked[asked.length - 1]).toBe(layout.stations.length);
  });
});
