import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { bearingOf } from '../../src/core/roof/form';
import type { GablePlan } from '../../src/core/roof/plan';
import { signOf } from '../../src/core/roof/side';
import type { Timber } from '../../src/core/roof/timber';
import { planOf, rafterOf, roofOf } from '../roof/roofs';
import { allOf, gableTimbers, isBeveled, roofPlane, type GableTimbers } from './support/gableTimbers';
import { contact, freeSolids, heightsAbovePlane, overlap, sizesInPlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables as solids: what was figured is cut, put in its place, and has to fit. */

afterEach(freeSolids);

const some = fc.record({
  rise: fc.double({ min: 2, max: 18, noNaN: true }),
  span: fc.double({ min: 120, max: 480, noNaN: true }),
  length: fc.double({ min: 60, max: 260, noNaN: true }),
  overhang: fc.oneof(fc.constant(0), fc.double({ min: 2, max: 24, noNaN: true })),
  rakeOverhang: fc.constantFrom(0, 12),
  spacing: fc.constantFrom(12, 16, 19.2, 24, 32),
  depth: fc.constantFrom(5.5, 7.25, 9.25, 11.25),
  ridge: fc.record({ thickness: fc.constantFrom(0.75, 1.5), depth: fc.constantFrom(5.5, 9.25, 13.25) }),
  plate: fc.record({ width: fc.constantFrom(3.5, 5.5) }),
  seat: fc.double({ min: 1.5, max: 3.5, noNaN: true }),
  reference: fc.constantFrom('plate', 'sheathing'),
  datum: fc.constantFrom('endA', 'endB', 'centre'),
  blockStands: fc.constantFrom('plumb', 'square'),
  tieHeight: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 40, noNaN: true })),
  every: fc.constantFrom(1, 2),
});
type Some = typeof some extends fc.Arbitrary<infer T> ? T : never;

const changesOf = ({ rise, depth, seat, tieHeight, every, ...rest }: Some) => ({
  ...rest,
  slope: { rise, run: 12 },
  rafter: { thickness: 1.5, depth },
  seat: seat + (rest.reference === 'sheathing' ? 0.5 : 0),
  joists: { every, height: tieHeight },
  collars: { every },
});

/** Ties and collars only where the roof is high enough for them: legal plans hold some that no crew would build. */
const planFrom = (roof: Some): GablePlan => {
  const changes = changesOf(roof);
  const bare = roofOf({ ...changes, joists: false });
  const { topHeight } = bare.ridges[0]!;
  const tieTop = roof.tieHeight + roof.depth;
  const tieFits = tieTop < Math.min(topHeight - roof.ridge.depth, (topHeight * 2) / 3);
  const collarFits = !bare.cautions.some(({ code }) => code === 'collarsTight');
  return planOf({
    ...changes,
    joists: tieFits && changes.joists,
    collars: collarFits && changes.collars,
  });
};

/** Of roofs for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 12);

/** Others at each run. */
const everyGable = (holds: (plan: GablePlan, gable: GableTimbers) => void): void =>
  fc.assert(
    fc.property(some, (roof) => {
      const plan = planFrom(roof);
      holds(plan, gableTimbers(plan));
      freeSolids();
    }),
    { numRuns: plans },
  );

/** Share of the smaller member that two may both lay claim to. */
const least = 1e-6;

/** Inches that a top may be off its plane. */
const flush = 1e-6;

describe('no two members of a gable', () => {
  it('share wood', () => {
    everyGable((_, gable) => {
      const found = overlapsOf(allOf(gable));
      expect(found.length).toBeGreaterThan(gable.rafters.length);
      expect(clashesOf(found, least)).toEqual([]);
    });
  });

  it('share wood, however a tie comes to its blocks: on the plates, raised past them, or over them', () => {
    const over = fc.constantFrom('plates', 'under', 'within', 'over');
    fc.assert(
      fc.property(some, over, fc.constantFrom('plumb', 'square'), (roof, where, blockStands) => {
        const changes = { ...changesOf(roof), blockStands, joists: false, collars: false };
        const bare = gableTimbers(planOf(changes));
        const [{ m, clad }] = bare.eaves as [(typeof bare.eaves)[number]];
        const outer = bare.figured.commonRafters[0]!.heightAbovePlate + clad * m;
        const inner = outer + 1.5 * m;
        const height = { plates: 0, under: outer / 2, within: (outer + inner) / 2, over: inner }[where];
        fc.pre(height + roof.depth < bare.figured.ridges[0]!.topHeight - roof.ridge.depth);
        const joists = { every: roof.every, height };
        const { ties, blocks, figured } = gableTimbers(planOf({ ...changes, joists }));
        expect(clashesOf(overlapsOf([...ties, ...blocks]), least)).toEqual([]);
        const [tie] = figured.ties;
        if (where === 'plates') expect(tie!.behindBlocks!.length).toBeLessThan(tie!.length);
        if (where === 'over') expect(tie!.behindBlocks).toBeUndefined();
        freeSolids();
      }),
      { numRuns: 24 },
    );
  });

  it('share wood where the roof says nothing of collars being tight, and do where it says so', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(-0.01, 0.01), (roof, over) => {
        const changes = { ...changesOf(roof), ridge: { thickness: 1.5, depth: 9.25 }, joists: false };
        const third = roofOf(changes).ridges[0]!.topHeight / 3;
        fc.pre(third > 4.5 && third < 90);
        const plan = planOf({ ...changes, ridge: { thickness: 1.5, depth: third - 3.5 + over } });
        const { figured, ridge, collars } = gableTimbers(plan);
        const tight = figured.cautions.some(({ code }) => code === 'collarsTight');
        expect(tight).toBe(over > 0);
        const share = overlap(solidOf(ridge), solidOf(collars[0]!));
        if (tight) expect(share).toBeGreaterThan(1e-3);
        else expect(share).toBeLessThan(1e-9);
        freeSolids();
      }),
      { numRuns: 24 },
    );
  });
});

/** How far a member is pushed, inches: small next to any cut, large next to the kernel's own rounding, about 1e-10. */
const by = 1e-4;

/**
 * The pushed member moves past the edge of its face by the push, and where what follows there slopes by `k` a wedge of
 * by · by · k / 2 is added or missing: by · k · thickness / 2 of the area. Rounding is 1e-10 / by of each inch.
 */
const expectArea = (found: number, wanted: number, edge: { k: number; thickness: number }): void =>
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThan(
    by * edge.k * edge.thickness + 1e-5,
  );

describe('a common rafter', () => {
  it('bears on its plate with its seat, less what lies over the sheathing', () => {
    everyGable((plan, { eaves, rafters, plates }) => {
      const { thickness } = plan.rafter;
      for (const eave of eaves) {
        const plate = solidOf(plates[eave.side]);
        for (const rafter of rafters.filter(({ side }) => side === eave.side))
          expectArea(
            contact(solidOf(rafter), plate, { toward: [0, 0, -1], by }),
            bearingOf(eave) * thickness,
            { k: 1 / eave.m, thickness },
          );
      }
    });
  });

  it('bears on the ridge with its plumb cut, less what hangs below the board', () => {
    everyGable((plan, { figured, eaves, rafters, ridge }) => {
      const { thickness } = plan.rafter;
      const { plumbCutLength } = figured.commonRafters[0]!;
      const board = solidOf(ridge);
      for (const { side, m } of eaves)
        for (const rafter of rafters.filter((one) => one.side === side))
          expectArea(
            contact(solidOf(rafter), board, { toward: [0, -signOf(side), 0], by }),
            Math.min(plumbCutLength, plan.ridge.depth) * thickness,
            { k: m, thickness },
          );
    });
  });

  it('stands with its heel cut against the plate, where there is a tail and no sheathing between', () => {
    everyGable((plan, { figured, eaves, rafters, plates }) => {
      const { thickness } = plan.rafter;
      const { heelCut } = figured.commonRafters[0]!;
      for (const { side, m, clad } of eaves) {
        const [rafter] = rafters.filter((one) => one.side === side);
        const found = contact(solidOf(rafter!), solidOf(plates[side]), { toward: [0, -signOf(side), 0], by });
        const stands = plan.overhang > 0 && clad === 0;
        expectArea(found, stands ? Math.min(heelCut, 1.5) * thickness : 0, { k: m, thickness });
      }
    });
  });

  it('comes out of a board of its stock length and depth', () => {
    everyGable((plan, { figured, eaves, rafters }) => {
      if (plan.overhang === 0) return;
      const { stockLength } = figured.commonRafters[0]!;
      const [, along, deep] = sizesInPlane(rafters[0]!, roofPlane(plan, eaves[0]!));
      expect(along).toBeCloseTo(stockLength, 8);
      expect(deep).toBeCloseTo(plan.rafter.depth, 8);
    });
  });

  it('is a worse fit when any one of its figures is off, so these tests can see it', () => {
    const plan = planOf();
    const { rafters, ridge, plates } = gableTimbers(plan);
    const [rafter] = rafters;
    const moved = ([out, up]: readonly [number, number]): Timber => ({
      ...rafter!,
      outline: rafter!.outline.map(([along, z]) => [along + out, z + up]),
    });
    const [board, plate] = [solidOf(ridge), solidOf(plates.street)];
    // A sixteenth high it bears on nothing, a sixteenth low it runs into the plate, a sixteenth long into the ridge.
    expect(contact(solidOf(moved([0, 1 / 16])), plate, { toward: [0, 0, -1], by })).toBe(0);
    expect(overlap(solidOf(moved([0, -1 / 16])), plate)).toBeGreaterThan(0.3);
    expect(overlap(solidOf(moved([-1 / 16, 0])), board)).toBeGreaterThan(0.6);
    expect(rafterOf().seat * 1.5).toBeCloseTo(
      contact(solidOf(rafter!), plate, { toward: [0, 0, -1], by }),
      3,
    );
  });
});

describe('blocks and ties', () => {
  it('lie on the plate with all of their lower edges, ties as far as the blocks', () => {
    everyGable((plan, { eaves, blocks, ties, plates, figured }) => {
      const { thickness } = plan.rafter;
      for (const { side } of eaves) {
        const plate = solidOf(plates[side]);
        const down = (timber: Timber): number => contact(solidOf(timber), plate, { toward: [0, 0, -1], by });
        if (plan.blockStands === 'plumb')
          for (const block of blocks.filter((one) => one.side === side))
            expectArea(down(block), block.outline[1]![0] * thickness, { k: 0, thickness });
        const [tie] = figured.ties;
        if (tie?.kind !== 'joist') continue;
        const bears = plan.plate.width - (tie.length - tie.behindBlocks!.length) / 2;
        for (const joist of ties) expectArea(down(joist), bears * thickness, { k: 0, thickness });
      }
    });
  });
});

describe('in the plane of the roof', () => {
  it('lie the tops of rafters, blocks, collars and clipped ties, and nothing stands out of it', () => {
    everyGable((plan, gable) => {
      const { figured, eaves, rafters, blocks, ties, collars, ridge } = gable;
      const cut = figured.ties.some(
        (tie) =>
          tie.kind !== 'collar' &&
          (tie.behindBlocks ? tie.behindBlocks.clip > 1e-3 : tie.clip > 1e-3 || isBeveled(figured, tie)),
      );
      for (const eave of eaves) {
        const plane = roofPlane(plan, eave);
        const mine = [...rafters, ...blocks].filter(({ side }) => side === eave.side);
        for (const timber of [...mine, ...collars, ...(cut ? ties : [])])
          for (const height of heightsAbovePlane(timber, plane))
            expect(Math.abs(height), timber.id).toBeLessThan(flush);
        for (const timber of [ridge, ...ties])
          expect(Math.max(...heightsAbovePlane(timber, plane)), timber.id).toBeLessThan(flush);
        expect(Math.max(...heightsAbovePlane(ridge, plane))).toBeGreaterThan(-flush);
      }
    });
  });
});
