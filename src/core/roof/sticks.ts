import { lumber, nominalOf } from '../stock/lumber';
import type { Pieces } from '../stock/splices';
import { sawn, woodOf, type Wood } from '../stock/wood';
import type { FiguredBlock, FiguredDormer, FiguredRoof } from './figured';
import type { FiguredHip, FiguredJacks, Turn } from './figuredSlants';
import type { FiguredSplice, FiguredStick, MemberKind, Stock } from './figuredLists';
import type { RoofPlan } from './plan';
import { splicedMember } from './splicing';

/** Every member of a figured roof as sticks: what is cut from boards, and what is carried up. Inches. */

type Section = Omit<Stock, 'nominal'>;

/** A figured stick with the wood that is left of it, cubic inches, notches, bevels and clips not taken off. */
export type Stick = FiguredStick & { readonly volume: number; readonly wood: Wood };

/** No plan says what collars are made of. Ours: 2×4, over the least of IRC R802.4.6, a nominal 1×4 (read second hand). */
const collarStock: Section = { thickness: 1.5, depth: 3.5 };
/** Nor posts. Ours: 4×4, as they are set under ridges. */
const postStock: Section = { thickness: 3.5, depth: 3.5 };
/** Share of a block's thickness that its bevel covers at least, for the sheathing's nails. Common practice, no source. */
const leastBevel = 1 / 2;

type Made = {
  readonly member: string;
  readonly kind: MemberKind;
  readonly section: Section;
  readonly count: number;
  readonly length: number;
  /** Square to the thickness, square inches; its length by its depth unless said. */
  readonly face?: number;
  readonly wood?: Wood;
};

const stick = ({ member, kind, section, count, length, face, wood }: Made): Stick => ({
  member,
  kind,
  stock: stockOf(section),
  count,
  length,
  volume: (face ?? length * section.depth) * section.thickness,
  wood: wood ?? woodOf(section),
});

const stockOf = ({ thickness, depth }: Section): Stock => ({
  nominal: nominalOf({ thickness, depth }),
  thickness,
  depth,
});

export type Sticks = { readonly sticks: readonly Stick[]; readonly splices: readonly FiguredSplice[] };

/** In the order the figured roof has its members. */
export const sticksOf = (plan: RoofPlan, roof: FiguredRoof): Sticks => {
  const long = longOnes(plan, roof);
  const sticks = [
    ...commons(plan, roof),
    ...long.flatMap(({ sticks }) => sticks),
    ...roof.blocks.map((block) => blockStick(plan, block)),
    ...ties(plan, roof),
    ...(roof.posts ?? []).map(({ id, count, length, section = postStock }) =>
      stick({ member: id, kind: 'post', section, count, length, wood: sawn }),
    ),
    ...studs(plan, roof),
    ...(roof.hips ?? []).map((hip) => slantStick('hip', hip)),
    ...(roof.valleys ?? []).map((valley) => slantStick('valley', valley)),
    ...(roof.headers ?? []).map(({ id, section, count, length }) =>
      stick({ member: id, kind: 'header', section, count, length }),
    ),
    ...(roof.jacks ?? []).flatMap((jacks) => jackSticks(plan, jacks)),
    ...(roof.rakeRafters ?? []).map(({ id, section, count, stockLength, edgeLength }) =>
      stick({
        member: id,
        kind: 'rake',
        section,
        count,
        length: stockLength,
        face: edgeLength * section.depth,
      }),
    ),
    ...(roof.lookouts ?? []).map(({ id, section, count, length }) =>
      stick({ member: id, kind: 'lookout', section, count, length }),
    ),
    ...(roof.sleepers ?? []).map(({ id, section, count, lineLength }) =>
      stick({ member: id, kind: 'sleeper', section, count, length: lineLength + section.depth }),
    ),
    ...(roof.dormers ?? []).flatMap((dormer) => dormerSticks(plan, dormer)),
  ];
  return {
    sticks: sticks.filter(({ count }) => count > 0),
    splices: long.flatMap(({ splices }) => splices),
  };
};

const commons = ({ rafter }: RoofPlan, { commonRafters }: FiguredRoof): readonly Stick[] =>
  commonRafters.map(({ id, count, stockLength, edgeLength }) =>
    stick({
      member: id,
      kind: 'common',
      section: rafter,
      count,
      length: stockLength,
      face: edgeLength * rafter.depth,
    }),
  );

/** Besides its own commons; the trimmers are with the main ones. */
const dormerSticks = ({ rafter }: RoofPlan, dormer: FiguredDormer): readonly Stick[] => [
  ...dormer.headers.map(({ id, section, count, length }) =>
    stick({ member: id, kind: 'header', section, count, length }),
  ),
  ...[...dormer.lowerRafters, ...dormer.endRafters].map(({ id, count, stockLength, edgeLength }) =>
    stick({
      member: id,
      kind: 'common',
      section: rafter,
      count,
      length: stockLength,
      face: edgeLength * rafter.depth,
    }),
  ),
  ...[...dormer.upperRafters, ...(dormer.faceRafters ?? [])].map(({ id, count, stockLength, bodyLength }) =>
    stick({
      member: id,
      kind: 'common',
      section: rafter,
      count,
      length: stockLength,
      face: bodyLength * rafter.depth,
    }),
  ),
  ...dormer.sideStuds.flatMap(({ id, section, count, stockLengths }) =>
    stockLengths.map((length) =>
      stick({ member: id, kind: 'stud', section, count: count / stockLengths.length, length }),
    ),
  ),
];

/** Ridges and ledgers, piece by piece. */
const longOnes = (plan: RoofPlan, roof: FiguredRoof): readonly Sticks[] => [
  ...roof.ridges.map((ridge) => piecesOf(plan, roof, { ...ridge, kind: 'ridge' })),
  ...(roof.purlins ?? []).map((purlin) => piecesOf(plan, roof, { ...purlin, kind: 'purlin' })),
  ...(roof.ledgers ?? []).map((ledger) => piecesOf(plan, roof, { ...ledger, kind: 'ledger' })),
];

const piecesOf = (
  plan: RoofPlan,
  roof: FiguredRoof,
  {
    id,
    count,
    length,
    section,
    kind,
  }: {
    readonly id: string;
    readonly count: number;
    readonly length: number;
    readonly section: Section;
    readonly kind: 'ridge' | 'ledger' | 'purlin';
  },
): Sticks => {
  const { pieces, splice } = splicedMember(plan, roof, { member: id, length, onWall: kind === 'ledger' });
  const one = (piece: Pieces): Stick =>
    stick({ member: id, kind, section, count: count * piece.count, length: piece.length });
  return { sticks: pieces.map(one), splices: splice ? [splice] : [] };
};

/** Ripped from rafter stock, or from the next deeper board where that leaves too little of the bevel. */
const blockStick = ({ rafter }: RoofPlan, block: FiguredBlock): Stick => {
  const { id, count, length, height, bevel } = block;
  const over = (rafter.thickness * bevel.rise) / bevel.run;
  const least = height + leastBevel * over;
  const depth = [rafter, ...lumber.filter(({ thickness }) => thickness === rafter.thickness)]
    .map((section) => section.depth)
    .sort((a, b) => a - b)
    .find((one) => one >= rafter.depth && one >= least);
  return stick({
    member: id,
    kind: 'block',
    section: { thickness: rafter.thickness, depth: depth ?? least },
    count,
    length,
    face: length * (height + over / 2),
  });
};

const ties = ({ rafter }: RoofPlan, roof: FiguredRoof): readonly Stick[] =>
  roof.ties.map(({ id, kind, count, length: whole, behindBlocks }) => {
    const section = kind === 'collar' ? collarStock : rafter;
    return stick({ member: id, kind, section, count, length: behindBlocks?.length ?? whole });
  });

/** As deep as the plate is wide: they fill the same wall. */
const studs = (plan: RoofPlan, { gableStuds }: FiguredRoof): readonly Stick[] => {
  const thickness = 'gableStuds' in plan ? (plan.gableStuds?.thickness ?? 0) : 0;
  const section = { thickness, depth: plan.plate.width };
  return (gableStuds ?? []).flatMap(({ id, count, lengths }) =>
    lengths.map((length) =>
      stick({ member: id, kind: 'stud', section, count: count / lengths.length, length }),
    ),
  );
};

type Slanting = Pick<FiguredHip, 'slope' | 'cheeks'>;

/** Plumb cuts slant over the depth of a board: so much more of it than its top edge is long. */
const overDepth = ({ slope: { rise, run } }: Slanting, { depth }: Section): number => (depth * rise) / run;

/**
 * How far the long points of cheeks stand past the middle of the top edge, both ends. Two cheeks at an end come to a point:
 * alike, in the middle itself; otherwise no farther off than the sharper of them alone.
 */
const overCheeks = ({ cheeks }: Slanting, { thickness }: Section): number =>
  (['top', 'bottom'] as const)
    .map((end) =>
      cheeks.filter((cheek) => cheek.end === end).map(({ cheekAngle: { rise, run } }) => run / rise),
    )
    .reduce((sum, turns) => sum + pointPast(turns, thickness), 0);

const pointPast = (turns: readonly number[], thickness: number): number => {
  const longest = Math.max(0, ...turns);
  const alike = turns.length > 1 && turns.every((turn) => Math.abs(turn - longest) < 1e-9);
  return alike ? 0 : (thickness / 2) * longest;
};

/** Tails end at the tail lines of both planes: a hip's in a point, a valley's in a notch whose corners stand out. */
const overTail = (kind: 'hip' | 'valley', member: FiguredHip, { thickness }: Section): number => {
  if (member.tailLength === 0) return 0;
  const turns = member.backing.map((backing) => tailTurn(member.slope, backing));
  return kind === 'hip' ? pointPast(turns, thickness) : (thickness / 2) * Math.max(...turns);
};

/**
 * Along the top edge, how much a tail line runs off for each inch across. A backing bevel is m·sin over g·cos of the angle
 * in plan, and this is g·tan of it; 45° where nothing is backed.
 */
const tailTurn = ({ rise, run }: Turn, backing: Turn): number => {
  const m = rise / run;
  const square = 1 + m * m;
  return backing.rise > 0 ? (backing.rise * square) / (m * backing.run) : Math.sqrt(square);
};

const slantStick = (kind: 'hip' | 'valley', member: FiguredHip): Stick => {
  const { section } = member;
  const edge = member.bodyLength + member.tailLength;
  return stick({
    member: member.id,
    kind,
    section,
    count: member.count,
    length: edge + overDepth(member, section) + overCheeks(member, section) + overTail(kind, member, section),
    face: edge * section.depth,
  });
};

const jackSticks = ({ rafter }: RoofPlan, jacks: FiguredJacks): readonly Stick[] => {
  const more = overDepth(jacks, rafter) + overCheeks(jacks, rafter);
  return jacks.lengths.map((body, i) => {
    const edge = body + jacks.tailLength;
    return stick({
      member: jacks.id,
      kind: 'jack',
      section: rafter,
      count: jacks.counts[i] ?? 0,
      length: edge + more,
      face: edge * rafter.depth,
    });
  });
};
