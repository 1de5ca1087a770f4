import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import { sample, type Changes } from './roofs';

/** Sheds whose rafters bear on a second, higher wall, and sheds between side walls. */

const { ridge: _ridge, ...bare } = sample;
const ledger = { thickness: 1.5, depth: 9.25 };
const open = { ...bare, kind: 'shed', span: 144 };
const onWall = (changes: Changes = {}) => ({ ...open, highPlate: {}, ...changes });
const onLedger = (changes: Changes = {}) => ({ ...open, ledger, ...changes });
const figured = (one: unknown): FiguredRoof => {
  const read = readRoof(one);
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  return figure(read.value);
};
const refused = (one: unknown) => {
  const read = readRoof(one);
  return read.ok ? [] : read.complaints;
};
const told = ({ cautions }: FiguredRoof) => cautions.map(({ code, at }) => `${code} ${at}`);
const tenth = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

describe('a shed on two walls, by hand', () => {
  // 9 in 12, so g = 5/4; rafters 8 in deep; 12 ft over both plates of 6 in; seats of 3 in below and 4 in above.
  const roof = figured(
    onWall({
      slope: { rise: 9, run: 12 },
      rafter: { thickness: 1.5, depth: 8 },
      plate: { width: 6 },
      seat: 3,
      overhang: 12,
      highPlate: { seat: 4, overhang: 10 },
    }),
  );

  it('its rafters run from heel to heel, 144 - 6, and on over the high plate', () => {
    expect(roof.commonRafters).toHaveLength(1);
    expect(roof.commonRafters[0]).toMatchObject({
      run: 138,
      rise: 103.5,
      lineLength: 172.5,
      shortening: 0,
      bodyLength: 172.5,
      tailLength: 15,
      // + (6 + 10) x 5/4
      edgeLength: 207.5,
      // + 8 x 3/4
      stockLength: 213.5,
      heightAbovePlate: 7.75,
    });
    const { high } = roof.commonRafters[0]!;
    expect(high).toMatchObject({ seat: 4, heelCut: 3, heightAbovePlate: 7, tailLength: 20 });
    expect(high?.notchDepth).toBeCloseTo(2.4, 12);
  });

  it('its high plate stands 7 3/4 + 103 1/2 - 7 over the low one', () => {
    expect(roof.highPlates).toEqual([
      { id: 'highPlate', count: 1, side: 'yard', length: 312, height: 104.25 },
    ]);
    expect(roof.ledgers).toBeUndefined();
  });

  it('blocks on the high plate are 7 + 6 x 3/4 at their outer face, as many as on the low one', () => {
    const on = (wall: string) => roof.blocks.filter(({ side }) => side === wall);
    expect(on('yard').map(({ height }) => height)).toEqual(on('street').map(() => 11.5));
    expect(on('yard').map(({ count }) => count)).toEqual(on('street').map(({ count }) => count));
    expect(new Set(roof.blocks.map(({ id }) => id)).size).toBe(roof.blocks.length);
  });

  it('the deeper notch is told at its own seat', () => {
    // 4 x (3/4) / (5/4) = 2.4 against 8 / 4 = 2; below 3 x 0.6 = 1.8.
    expect(told(roof)).toEqual(['notchDeep highPlate.seat']);
  });
});

describe('a shed on two walls', () => {
  const some = fc.record({
    rise: tenth(2, 12),
    width: tenth(3, 8),
    span: tenth(100, 300),
    seat: tenth(2, 3),
  });

  it('has the rafters of one on a ledger whose face stands where the high plate begins, up to there', () => {
    fc.assert(
      fc.property(some, ({ rise, width, span, seat }) => {
        const shared = { slope: { rise, run: 12 }, seat, reference: 'sheathing' };
        const [wall] = figured(onWall({ ...shared, span, highPlate: { width, seat } })).commonRafters;
        const [hung] = figured(onLedger({ ...shared, span: span - width + 1.5 })).commonRafters;
        for (const key of ['bodyLength', 'tailLength', 'heightAbovePlate', 'notchDepth'] as const)
          expect(wall?.[key]).toBeCloseTo(hung![key], 9);
      }),
    );
  });

  it('with seats alike has walls that differ by the run times the slope', () => {
    fc.assert(
      fc.property(some, ({ rise, width, span, seat }) => {
        const roof = figured(onWall({ slope: { rise, run: 12 }, span, seat, highPlate: { width } }));
        expect(roof.highPlates?.[0]?.height).toBeCloseTo(((span - width) * rise) / 12, 9);
        expect(roof.commonRafters[0]?.high?.heightAbovePlate).toBe(roof.commonRafters[0]?.heightAbovePlate);
      }),
    );
  });

  it('over sheathing bears as much on both plates, and counts its high overhang from the sheathing', () => {
    const [rafter] = figured(onWall({ reference: 'sheathing', highPlate: { overhang: 10 } })).commonRafters;
    expect(rafter?.high?.seat).toBe(3.5 - 0.5);
    expect(rafter?.high?.tailLength).toBeCloseTo((5.5 + 0.5 + 10) * Math.sqrt(1.25), 9);
    expect(rafter?.run).toBe(144 - 5.5 + 0.5);
  });

  it('has no square blocks on a high plate where thick rafters leave them no room', () => {
    // 3 in deep, 14 thick, 6 in 12: (3·g − 0.5 + (3 − 14/g)·0.5)/g with g = √5/2 is −1.7 in.
    const thick = {
      blockStands: 'square',
      rafter: { thickness: 14, depth: 3 },
      seat: 1,
      highPlate: { width: 3, seat: 1 },
    };
    const sides = figured(onWall(thick)).blocks.map(({ side }) => side);
    expect(sides.length).toBeGreaterThan(0);
    expect(sides).not.toContain('yard');
  });

  it('with square blocks stands them on their inner edge, as high as from there to the plane', () => {
    const m = 0.5;
    const g = Math.sqrt(1.25);
    const high = figured(onWall({ blockStands: 'square' })).blocks.find(({ side }) => side === 'yard');
    // The inner edge is 1 1/2 / g inside the outer face, which the outer edge comes under.
    const over = 7.25 * g - 3.5 * m + (5.5 - 1.5 / g) * m;
    expect(high?.height).toBeCloseTo(over / g, 9);
  });

  it.each([
    [{ highPlate: { seat: 1.4 } }, ['bearingShort highPlate.seat']],
    [{ highPlate: { overhang: 25 } }, ['tailLong highPlate.overhang']],
    [{ highPlate: { seat: 4.1 } }, ['notchDeep highPlate.seat']],
    [
      {
        rafter: { thickness: 1.5, depth: 5.5 },
        seat: 1.5,
        overhang: 0,
        highPlate: { seat: 4.6, overhang: 1 },
      },
      ['notchDeep highPlate.seat', 'tailThin highPlate.seat'],
    ],
    [{}, []],
  ])('with %j is told %j', (changes, codes) => {
    expect(told(figured(onWall(changes)))).toEqual(codes);
  });

  it.each([
    [{ highPlate: { seat: 6 } }, 'highPlate.seat', 'at most 5.5 in'],
    [
      { slope: { rise: 36, run: 12 }, seat: 1, highPlate: { width: 12, seat: 11 } },
      'highPlate.seat',
      'less than',
    ],
    [{ span: 12, plate: { width: 9 } }, 'span', 'more than 12.5 in'],
    [{ ledger }, 'highPlate', 'one of the two'],
    [{ highPlate: undefined }, 'ledger', 'highPlate'],
  ])('with %j is refused at %s', (changes, path, accepted) => {
    const found = refused(JSON.parse(JSON.stringify(onWall(changes))));
    expect(found.map((one) => one.path)).toEqual([path]);
    expect(found[0]?.accepted).toContain(accepted);
  });
});

describe('a shed under 3 in 12', () => {
  const flat = { slope: { rise: 2, run: 12 } };

  it('is figured, and told what the limit is for and what carries its upper ends', () => {
    const text = (one: unknown) => figured(one).cautions.find(({ code }) => code === 'slopeLow')?.text ?? '';
    expect(text(onLedger(flat))).toMatch(/2 in 12.*3 in 12.*ridges, hips and valleys.*ledger/);
    expect(text(onWall(flat))).toMatch(/high wall carries half/);
    expect(text(onWall({ slope: { rise: 3, run: 12 } }))).toBe('');
  });
});

describe('a shed between walls', () => {
  it('tight to them has the rafters of an open one', () => {
    const [tight, free] = [figured(onLedger({ between: {} })), figured(onLedger())];
    expect(tight).toEqual(free);
  });

  it('has bays, rafters and clearances that make up its length', () => {
    fc.assert(
      fc.property(
        tenth(0, 6),
        tenth(40, 400),
        fc.constantFrom('endA', 'endB', 'centre'),
        (clearance, length, datum) => {
          const { layout } = figured(onWall({ between: { clearance }, length, datum }));
          const [first = 0, last = 0] = [layout.stations[0], layout.stations.at(-1)];
          expect(first).toBeCloseTo(clearance + 0.75, 9);
          expect(last).toBeCloseTo(length - clearance - 0.75, 9);
          const bays = layout.stations.slice(1).map((x, i) => x - (layout.stations[i] as number));
          for (const bay of bays.slice(1, -1)) expect(bay).toBeCloseTo(24, 9);
          for (const bay of bays) expect(bay).toBeGreaterThan(1.5);
        },
      ),
    );
  });

  it('is the mirror image laid out from the other wall', () => {
    const rows = ['endA', 'endB'].map(
      (datum) => figured(onLedger({ between: { clearance: 1 }, datum })).layout.stations,
    );
    expect([...rows[1]!].reverse().map((x) => 312 - x)).toEqual(rows[0]);
  });

  it.each([
    [{ between: {}, rakeOverhang: 6 }, 'rakeOverhang'],
    [{ between: {}, gableStuds: {} }, 'gableStuds'],
    [{ between: { clearance: 5 }, length: 12 }, 'between.clearance'],
  ])('with %j is refused at %s', (changes, path) => {
    expect(refused(onLedger(changes)).map((one) => one.path)).toEqual([path]);
  });

  it('means nothing on a gable', () => {
    expect(refused({ ...sample, between: {} }).map(({ path }) => path)).toEqual(['between']);
  });
});
