import type { Vec2, Vec3 } from '../../../src/core/geometry/vector';
import { baysOf } from '../../../src/core/roof/bays';
import { figure } from '../../../src/core/roof/figure';
import type { CommonRafter, FiguredBlock, FiguredRoof, FiguredTie } from '../../../src/core/roof/figured';
import { expand } from '../../../src/core/roof/expand';
import type { Eave as AnyEave } from '../../../src/core/roof/form';
import { limits } from '../../../src/core/roof/limits';
import type { GablePlan } from '../../../src/core/roof/plan';
import { rafterOutline } from '../../../src/core/roof/rafterOutline';
import { signOf, type Side } from '../../../src/core/roof/side';
import type { Timber } from '../../../src/core/roof/timber';
import type { Plane } from './kernel';

/** The members of a gable as a crew cuts them: from the figured numbers, where the plan does not say itself. */
export type GableTimbers = {
  readonly figured: FiguredRoof;
  readonly eaves: readonly Eave[];
  readonly rafters: readonly (Timber & { readonly side: Side })[];
  readonly ridge: Timber;
  readonly plates: Readonly<Record<Side, Timber>>;
  readonly blocks: readonly (Timber & { readonly side: Side })[];
  readonly ties: readonly Timber[];
  readonly collars: readonly Timber[];
};

/** Of a long wall: a gable has no others. */
type Eave = AnyEave & { readonly side: Side };

export const gableTimbers = (plan: GablePlan): GableTimbers => {
  const figured = figure(plan);
  const eaves = expand(plan).eaves as readonly Eave[];
  return {
    figured,
    eaves,
    rafters: eaves.flatMap((eave) => raftersOf(plan, figured, eave)),
    ridge: ridgeOf(plan, figured),
    plates: { street: plateOf(plan, 'street'), yard: plateOf(plan, 'yard') },
    blocks: eaves.flatMap((eave) => blocksOf(plan, figured, eave)),
    ties: tiesOf(plan, figured, 'low'),
    collars: tiesOf(plan, figured, 'collar'),
  };
};

export const allOf = ({ rafters, ridge, plates, blocks, ties, collars }: GableTimbers): readonly Timber[] => [
  ...rafters,
  ridge,
  plates.street,
  plates.yard,
  ...blocks,
  ...ties,
  ...collars,
];

/**
 * The plane of the top edges, from the plan and by no figured height: the underside comes out at the inner end of the
 * seat, and the top edge lies the rafter's depth off it.
 */
export const roofPlane = (plan: GablePlan, { side, run, m, seat }: Eave): Plane => ({
  normal: [0, m * signOf(side), 1],
  reach: m * (run - seat) + plan.rafter.depth * Math.sqrt(1 + m * m),
});

const forSide = <T extends { readonly side: string }>(rows: readonly T[], side: Side): readonly T[] =>
  rows.filter((row) => row.side === side || row.side === 'both');

/** Out from the ridge along the level direction of its side. */
const outward = (side: Side): Vec2 => [0, signOf(side)];

const raftersOf = (plan: GablePlan, { commonRafters, layout }: FiguredRoof, { side }: Eave) =>
  layout.stations.map((x, i) => ({
    id: `rafter.${side}.${i + 1}`,
    side,
    origin: [x, 0] as const,
    direction: outward(side),
    outline: rafterOutline(forSide(commonRafters, side)[0] as CommonRafter),
    thickness: plan.rafter.thickness,
    cuts: [],
  }));

const level = (along: Vec2, z: Vec2): readonly Vec2[] => [
  [along[0], z[0]],
  [along[1], z[0]],
  [along[1], z[1]],
  [along[0], z[1]],
];

const ridgeOf = ({ rakeOverhang, ridge }: GablePlan, { ridges }: FiguredRoof): Timber => {
  const { length, topHeight } = ridges[0] as FiguredRoof['ridges'][number];
  return {
    id: 'ridge',
    origin: [-rakeOverhang, 0],
    direction: [1, 0],
    outline: level([0, length], [topHeight - ridge.depth, topHeight]),
    thickness: ridge.thickness,
    cuts: [],
  };
};

const plateThickness = 1.5;

const plateOf = ({ span, length, plate }: GablePlan, side: Side): Timber => ({
  id: `plate.${side}`,
  origin: [0, (signOf(side) * (span - plate.width)) / 2],
  direction: [1, 0],
  outline: level([0, length], [-plateThickness, 0]),
  thickness: plate.width,
  cuts: [],
});

/** One in each bay that has room, in its middle, of rafter stock, its outer face from the outer edge of the plate. */
const blocksOf = (plan: GablePlan, { blocks, layout }: FiguredRoof, { side }: Eave) =>
  baysOf(layout.stations, plan).flatMap(({ clear, block }, i) => {
    const figured = forSide(blocks, side).find(({ length }) => Math.abs(length - block) < 1e-6);
    if (!figured) return [];
    const from = (layout.stations[i] as number) + (plan.rafter.thickness + clear - figured.length) / 2;
    const id = `block.${side}.${i + 1}`;
    const made = plan.blockStands === 'plumb' ? plumbBlock : leaningBlock;
    return [{ side, ...made(plan, { id, figured, side, from }) }];
  });

type Block = {
  readonly id: string;
  readonly figured: FiguredBlock;
  readonly side: Side;
  readonly from: number;
};

/** High enough for its inner face, then ripped to the figured height outside and the figured bevel. */
const plumbBlock = (plan: GablePlan, { id, figured, side, from }: Block): Timber => {
  const { thickness } = plan.rafter;
  const { rise, run } = figured.bevel;
  const sign = signOf(side);
  const normal: Vec3 = [0, sign * rise, run];
  return {
    id,
    origin: [from, (sign * (plan.span - thickness)) / 2],
    direction: [1, 0],
    outline: level([0, figured.length], [0, figured.height + (2 * thickness * rise) / run]),
    thickness,
    cuts: [{ normal, reach: (rise * plan.span) / 2 + run * figured.height }],
  };
};

/** Seen from its end, as a rectangle that leans out square to the slope from the outer edge of the plate. */
const leaningBlock = (plan: GablePlan, { id, figured, side, from }: Block): Timber => {
  const { rise, run } = plan.slope;
  const g = Math.sqrt(rise * rise + run * run);
  const [c, s] = [run / g, rise / g];
  const [t, h] = [plan.rafter.thickness, figured.height];
  return {
    id,
    origin: [from + figured.length / 2, (signOf(side) * plan.span) / 2],
    direction: outward(side),
    outline: [
      [0, 0],
      [h * s, h * c],
      [h * s - t * c, h * c + t * s],
      [-t * c, t * s],
    ],
    thickness: figured.length,
    cuts: [],
  };
};

/** Long points in the roof planes, so that the whole end is beveled; lower ones only lose their corners. */
export const isBeveled = ({ commonRafters }: FiguredRoof, { height }: FiguredTie): boolean =>
  commonRafters.every(({ heightAbovePlate }) => height >= heightAbovePlate);

/** Ties are of rafter stock. Collars are as deep as the least allowed one, and as thick as rafters. */
const tiesOf = (plan: GablePlan, figured: FiguredRoof, what: 'low' | 'collar'): readonly Timber[] => {
  const { ties, layout } = figured;
  const [tie] = ties.filter(({ kind }) => (kind === 'collar') === (what === 'collar'));
  const every = what === 'collar' ? plan.collars && plan.collars.every : plan.joists && plan.joists.every;
  if (!tie || !every) return [];
  const depth = what === 'collar' ? limits.collarDepth : plan.rafter.depth;
  const beveled = { length: tie.length, clip: depth };
  const cut = tie.behindBlocks ?? (isBeveled(figured, tie) ? beveled : tie);
  const outline = tieOutline(plan, tie.height, { depth, ...cut });
  const last = layout.stations.length - 1;
  return layout.stations.flatMap((x, i) =>
    i % every === 0 || i === last ? [tieAt(plan, { id: `${tie.kind}.${i + 1}`, x, outline })] : [],
  );
};

type Placed = { readonly id: string; readonly x: number; readonly outline: readonly Vec2[] };

/** Flat against its pair of rafters, on the side that looks to the middle of the roof. */
const tieAt = ({ rafter: { thickness }, length }: GablePlan, { id, x, outline }: Placed): Timber => ({
  id,
  origin: [x < length / 2 ? x + thickness : x - thickness, 0],
  direction: [0, 1],
  outline,
  thickness,
  cuts: [],
});

/** Long points below; above, as much off each end as the slope asks for over the height of what is clipped. */
const tieOutline = (
  { slope }: GablePlan,
  height: number,
  { depth, length, clip }: { readonly depth: number; readonly length: number; readonly clip: number },
): readonly Vec2[] => {
  const half = length / 2;
  const top = height + depth;
  const right: readonly Vec2[] = [
    [half, height],
    ...(clip < depth ? [[half, top - clip] as const] : []),
    ...(clip > 0 ? [[half - (clip * slope.run) / slope.rise, top] as const] : []),
  ];
  return [...right.map(([y, z]): Vec2 => [-y, z]), ...[...right].reverse()];
};
