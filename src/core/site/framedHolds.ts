import { roofOf, stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import { splitShare } from '../mechanics/fasteners';
import type { GableBlock, GableBrace, GableStrap, GableTie, Nails, WallHold } from '../mechanics/gable';
import type { Side } from '../roof/side';
import { fastened } from './holding';
import {
  blockEndsOf,
  ledgerJoint,
  partsOfJoint,
  placeOf,
  rafterId,
  type BlockId,
  type JointId,
  type StrapId,
} from './ids';
import { splitMembers } from './punch';
import type { Standing } from './standing';
import type { Placed, SiteState } from './state';

/** What holds rafters besides ridge and plate, as the frame takes it: ties, braces, blocks and straps. */

/** The nails of a joint that count. */
export type NailsIn = (joint: string) => Nails;

/** Nails count in part where they go through a stick that is split. */
export const nailsOf = (standing: Standing): NailsIn => {
  const split = splitMembers(standing);
  const { joints } = standing.site;
  return (joint) => {
    const so = joints[joint as JointId] ?? none;
    if (split.length === 0 || !split.includes(partsOfJoint(joint).member)) return so;
    return { nails: so.nails * splitShare, tacks: so.tacks * splitShare };
  };
};
const none: Nails = { nails: 0, tacks: 0 };

type Sort = 'tie' | 'block' | 'strap';
type Sorted = Readonly<Record<Sort, readonly (readonly [string, Placed])[]>>;

/** Members of one sort, in the order in which they went up. */
const membersOf = ({ members }: SiteState, sort: Sort): Sorted[Sort] => {
  const known = sorted.get(members) ?? sortedOf(members);
  sorted.set(members, known);
  return known[sort];
};
const sorted = new WeakMap<SiteState['members'], Sorted>();

const sortedOf = (members: SiteState['members']): Sorted => {
  const all = Object.entries(members) as [string, Placed][];
  const starting = (...words: readonly string[]): Sorted[Sort] =>
    all.filter(([id]) => words.some((word) => id.startsWith(word)));
  return {
    tie: starting('joist.', 'rafterTie.', 'crossTie.', 'collar.'),
    block: starting('block.'),
    strap: starting('strap.'),
  };
};

export const tiesOf = ({ level, site }: Standing, nails: NailsIn): readonly GableTie[] => {
  const section = level.plan.rafter;
  const ties: GableTie[] = [];
  for (const [id, placed] of membersOf(site, 'tie')) {
    const station = (placeOf(id).station ?? 1) - 1;
    const add = (kind: GableTie['kind'], name: string, joints: Joints): void => {
      const count = Math.min(9, nails(joints[0]).nails, nails(joints[1]).nails);
      if (count === 0) return;
      const height = tieHeight(level, kind, placed);
      ties.push({ name, kind, station, section, height, nails: count, ...restOf(site, name) });
    };
    if (id.startsWith('collar.')) add('upper', id, endsOf('collarEnd', id));
    else {
      add('plates', id, endsOf('joistPlate', id));
      add('heels', `heels.${station + 1}`, heelTies(station + 1));
    }
  }
  return ties;
};

type Joints = readonly [string, string];
const endsOf = (kind: 'collarEnd' | 'joistPlate', id: string): Joints => [
  `${kind}:${id}.street`,
  `${kind}:${id}.yard`,
];

/** How the two sides stood to each other when they were fastened. */
const restOf = ({ rests }: SiteState, name: string): { readonly rest?: number } => {
  const rest = rests[name]?.[0];
  return rest === undefined ? {} : { rest };
};

/** Middle of a tie above the plates. */
export const tieHeight = (level: Level, kind: GableTie['kind'], placed: Placed): number => {
  const half = level.plan.rafter.depth / 2;
  const collar = roofOf(level).ties.find((tie) => tie.kind === 'collar')?.height ?? 0;
  return kind === 'upper' ? collar + (placed.off ?? 0) + half : half;
};

const heelTies = (station: number): Joints => [
  `heelTie:${rafterId('street', station)}`,
  `heelTie:${rafterId('yard', station)}`,
];

/** What fastens a ledger to the studs behind it. */
export const wallHolds = ({ level, site }: Standing): readonly WallHold[] =>
  stationsOf(level).flatMap((_, i): readonly WallHold[] => {
    const joint = ledgerJoint(i + 1);
    const so = site.joints[joint];
    const rest = site.rests[joint];
    return so ? [{ joint, station: i, ...so, ...(rest ? { rest } : {}) }] : [];
  });

export const bracesOf = ({ level, site }: Standing): readonly GableBrace[] => {
  const stations = stationsOf(level);
  const { length } = level.plan;
  const brace = (name: string, way: GableBrace['way'], x: number): readonly GableBrace[] =>
    site.members[name as 'brace.along.1'] ? [{ name, way, x, ...restOf(site, name) }] : [];
  return [
    ...brace('brace.across.A', 'across', stations[0] as number),
    ...brace('brace.across.B', 'across', stations[stations.length - 1] as number),
    ...brace('brace.along.1', 'along', length / 2),
  ];
};

/** Which rafter the end of a block is nailed to. */
export const metBy = (end: string): Pick<GableBlock, 'side' | 'station'> => {
  const { side, station: bay } = placeOf(end) as { side: Side; station: number };
  return { side, station: end.endsWith('.far') ? bay : bay - 1 };
};

/** Ends of blocks that are nailed to the plate as well. */
export const blocksOf = ({ site }: Standing, nails: NailsIn): readonly GableBlock[] =>
  membersOf(site, 'block').flatMap(([id]): readonly GableBlock[] => {
    const plate = `blockPlate:${id as BlockId}` as const;
    if (!fastened(site, plate)) return [];
    return blockEndsOf(id as BlockId)
      .filter((end) => fastened(site, end))
      .map((name) => ({
        name,
        ...metBy(name),
        end: nails(name),
        plate: nails(plate),
        ...restOf(site, name),
      }));
  });

export const strapsOf = ({ site }: Standing, nails: NailsIn): readonly GableStrap[] =>
  membersOf(site, 'strap').flatMap(([id]): readonly GableStrap[] => {
    const name = `strap:${id as StrapId}` as const;
    const count = nails(name).nails;
    const station = (placeOf(id).station as number) - 1;
    return count > 0 ? [{ name, station, nails: count, ...restOf(site, name) }] : [];
  });
