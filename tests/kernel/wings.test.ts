import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { deckOf, handsOf, type Edge } from '../../src/core/roof/edges';
import { heightOver } from '../../src/core/roof/heightOver';
import { woodOf } from '../../src/core/roof/hips';
import { jacksOf, type Jack } from '../../src/core/roof/jacks';
import { isCommon } from '../../src/core/roof/planes';
import type { GablePlan } from '../../src/core/roof/plan';
import { settledFraming } from '../../src/core/roof/settled';
import { planeCut } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables with a wing as solids: valleys that are long and short, that hang their ridge, that lie over sheathing. */

/** Of each kind for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const slope = fc.integer({ min: 3, max: 12 }).map((rise) => ({ rise, run: 12 }));

const wide = fc.record({
  slope,
  span: tenths(160, 360),
  length: tenths(420, 600),
  overhang: tenths(0, 20),
  spacing: fc.constantFrom(12, 16, 19.2, 24),
  reference: fc.constantFrom('plate' as const, 'sheathing' as const),
  ridge: fc.constantFrom(1.5, 3.5).map((thickness) => ({ thickness, depth: 14 })),
});

const wing = fc.record({
  side: fc.constantFrom('street' as const, 'yard' as const),
  at: tenths(180, 260),
  length: tenths(20, 120),
  overhang: tenths(0, 20),
  longFrom: fc.constantFrom('A' as const, 'B' as const),
  valley: fc.constantFrom(1.5, 1.75, 3.5).map((thickness) => ({ thickness, depth: 11.25 })),
  ridge: fc.constant({ thickness: 1.5, depth: 11.25 }),
});

const bare = {
  format: 'tack-and-true/roof@1',
  kind: 'gable',
  rafter: { thickness: 1.5, depth: 7.25 },
  plate: { width: 5.5 },
  seat: 2.5,
};

type Framing = 'longValley' | 'suspendedRidge' | 'overSheathing';

const withWing = (framing: Framing, own: fc.Arbitrary<object>) =>
  fc
    .record({ main: wide, one: wing, own })
    .map(({ main, one, own }) => ({ ...bare, ...main, wings: [{ ...one, framing, ...own }] }));

/** Narrower than the main roof and with a slope of its own, or as wide as it is. */
const narrow = fc.record({ span: tenths(60, 300), slope });
const equal = wide.chain((main) =>
  wing.map((one) => ({ ...bare, ...main, wings: [{ ...one, span: main.span }] })),
);

const kinds = [
  ['as wide as the main roof', equal],
  ['with a long valley', withWing('longValley', narrow)],
  ['with a ridge that hangs', withWing('suspendedRidge', narrow)],
  ['over sheathing', withWing('overSheathing', narrow)],
] as const;

const every = (files: fc.Arbitrary<object>, holds: (plan: GablePlan) => void): void =>
  fc.assert(
    fc.property(files, (file) => {
      const read = readRoof(file);
      fc.pre(read.ok && read.value.kind === 'gable');
      holds(read.value as GablePlan);
      freeSolids();
    }),
    { numRuns: plans },
  );

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;

const nameOf = ({ piece, bottom }: Jack): string => {
  const { eave, at, from } = piece;
  const part = eave.body.id === 'main' ? '' : `${eave.body.id}.`;
  return `rafter.${part}${eave.side}.${at}${bottom ? `.${Math.round(from)}` : ''}`;
};

/** Plumb height of the face between a jack and a valley that both come to the planes at its middle. */
const faceHeight = (plan: GablePlan, m: number, { edge, skew, wood }: Met): number => {
  const fall = (wood.thickness / 2) * m * skew.sin;
  const jack = plan.rafter.depth * Math.sqrt(1 + m * m);
  return Math.min(jack - fall, wood.depth * Math.sqrt(1 + edge.m * edge.m));
};

/** Where a valley's own upper end is cut, no whole cheek is left to bear on. */
const isNearEnd = ({ piece, bottom }: Jack): boolean => {
  if (!bottom) return false;
  const { from, run } = bottom.edge;
  const { foot, up } = piece.eave.plane;
  const [x, y] = up[0] === 0 ? [piece.at, foot[1]] : [foot[0], piece.at];
  const [px, py] = [x + up[0] * piece.from - from[0], y + up[1] * piece.from - from[1]];
  return run - Math.sqrt(px * px + py * py) < 12;
};

type Met = {
  readonly edge: Edge;
  readonly skew: { readonly cos: number; readonly sin: number };
  readonly wood: { readonly thickness: number; readonly depth: number };
};

describe.each(kinds)('a wing %s, as solids', (_, files) => {
  it('has no two members in the same place', () => {
    every(files, (plan) => expect(clashesOf(overlapsOf(timbersOf(plan)), 1e-6)).toEqual([]));
  });

  it('has the top edges of all its rafters in their planes', () => {
    every(files, (plan) => {
      const timbers = timbersOf(plan);
      for (const eave of settledFraming(plan).form.eaves) {
        const part = eave.body.id === 'main' ? '' : `${eave.body.id}.`;
        const top = planeCut(eave.plane, heightOver(plan.rafter.depth, eave));
        const own = timbers.filter(({ id }) => id.startsWith(`rafter.${part}${eave.side}.`));
        for (const timber of own)
          for (const height of heightsAbovePlane(timber, top))
            expect(Math.abs(height), timber.id).toBeLessThan(1e-6);
      }
    });
  });

  it('has every common bear on the plates with its seat', () => {
    every(files, (plan) => {
      const named = new Map(timbersOf(plan).map((timber) => [timber.id, solidOf(timber)]));
      const plates = [...named].filter(([id]) => id.startsWith('plate.')).map(([, solid]) => solid);
      for (const piece of settledFraming(plan).pieces.filter(isCommon)) {
        const { eave, at } = piece;
        const part = eave.body.id === 'main' ? '' : `${eave.body.id}.`;
        const rafter = named.get(`rafter.${part}${eave.side}.${at}`);
        const bears = plates
          .map((plate) => contact(rafter!, plate, { toward: [0, 0, -1] }))
          .reduce((sum, one) => sum + one, 0);
        expect(Math.abs(bears - (eave.seat - eave.clad) * plan.rafter.thickness)).toBeLessThan(slack);
      }
    });
  });

  it('has every jack bear on its valley, or stand on its sleeper, with the whole cut', () => {
    every(files, (plan) => {
      const framing = settledFraming(plan);
      const { form } = framing;
      const named = new Map(timbersOf(plan).map((timber) => [timber.id, solidOf(timber)]));
      const sleepers = [...named].filter(([id]) => id.startsWith('sleeper.')).map(([, solid]) => solid);
      for (const jack of jacksOf(plan, framing)) {
        const { bottom, piece } = jack;
        if (!bottom) continue;
        const { edge, skew } = bottom;
        const { m, seat, plane } = piece.eave;
        // Near the plate its seat takes some of the cut.
        if (isNearEnd(jack)) continue;
        if (piece.from < seat + bottom.shortening + 2 * plan.rafter.thickness * (skew.cos / skew.sin))
          continue;
        const solid = named.get(nameOf(jack))!;
        const wood = woodOf(form, edge);
        const deck = deckOf(form, edge);
        if (deck) {
          const [x, y] = deck.plane.up;
          const g = Math.sqrt(1 + deck.plane.m * deck.plane.m);
          const down = [(deck.plane.m * x) / g, (deck.plane.m * y) / g, -1 / g] as const;
          const bears = sleepers.reduce((sum, one) => sum + contact(solid, one, { toward: down }), 0);
          // A foot that is longer than its sleeper is wide hangs over the sheathing.
          const foot = plan.rafter.thickness * g * ((plan.rafter.depth * Math.sqrt(1 + m * m)) / m);
          expect(bears).toBeGreaterThan(0);
          expect(bears).toBeLessThan(foot + slack);
          continue;
        }
        const [x, y] = edge.line.way;
        const across = [-y, x] as const;
        const out = across[0] * plane.up[0] + across[1] * plane.up[1] < 0 ? across : ([y, -x] as const);
        const { left, right } = handsOf(edge);
        const valley = named.get(`valley.${left.plane.id}.${right.plane.id}`)!;
        const bears = contact(solid, valley, { toward: [...out, 0] });
        const wanted = (plan.rafter.thickness / skew.sin) * faceHeight(plan, m, { edge, skew, wood: wood! });
        expect(Math.abs(bears - wanted), nameOf(jack)).toBeLessThan(slack);
      }
    });
  });
});
