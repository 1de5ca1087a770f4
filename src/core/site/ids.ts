import type { End, Side, Wall } from '../roof/side';
import { lookedUp } from '../units/lookedUp';

/** Names of the things on the site. They are plain strings in saved files and in the page, so they never change meaning. */
export type RafterId = `rafter.${Side}.${number}`;
export type BlockId = `block.${Side}.${number}`;
export type TieId = `joist.${number}` | `rafterTie.${number}` | `crossTie.${number}`;
export type CollarId = `collar.${number}`;
export type StrapId = `strap.${number}`;
export type PostId = `post.${number}`;
export type BraceId = `brace.across.${End}` | 'brace.along.1' | `brace.wall.${Wall}`;
export type MemberId = 'ridge' | RafterId | BlockId | TieId | CollarId | StrapId | PostId | BraceId;

/** Boards on the ground. `board.n` are cut rafters with two to spare; the ridge is `board.ridge`. */
export type BoardId = `board.${number}` | 'board.ridge';

export type JointId =
  | `ridge:${RafterId}`
  | LedgerJoint
  | `heel:${RafterId}`
  | `heelTie:${RafterId}`
  | `joistPlate:${TieId}.${Side}`
  | `blockEnd:${BlockId}.near`
  | `blockEnd:${BlockId}.far`
  | `blockPlate:${BlockId}`
  | `collarEnd:${CollarId}.${Side}`
  | `strap:${StrapId}`
  | `postHead:${PostId}`
  | `postFoot:${PostId}`;

/** A ledger to the studs behind it, at a rafter's place. */
export type LedgerJoint = `ledger:ridge.${number}`;

export type JointKind =
  | 'ridge'
  | 'ledger'
  | 'heel'
  | 'heelTie'
  | 'joistPlate'
  | 'blockEnd'
  | 'blockPlate'
  | 'collarEnd'
  | 'strap'
  | 'postHead'
  | 'postFoot';

export const rafterId = (side: Side, station: number): RafterId => `rafter.${side}.${station}`;
export const ledgerJoint = (station: number): LedgerJoint => `ledger:ridge.${station}`;
export const blockId = (side: Side, bay: number): BlockId => `block.${side}.${bay}`;

/** The two ends of a block, nailed to the rafters before and after it. */
export const blockEndsOf = (block: BlockId): readonly JointId[] => [
  `blockEnd:${block}.near`,
  `blockEnd:${block}.far`,
];

/** The kind before the colon and the member after it, without `.near`, `.far` or a side at the end. */
export const partsOfJoint = lookedUp((joint): { readonly kind: JointKind; readonly member: MemberId } => {
  const colon = joint.indexOf(':');
  const kind = joint.slice(0, colon);
  const rest = joint.slice(colon + 1);
  const member = kind === 'ledger' ? 'ridge' : memberIn(rest);
  return { kind: kind as JointKind, member: member as MemberId };
});

const memberIn = (rest: string): string =>
  /\.(near|far|street|yard)$/.test(rest) ? rest.slice(0, rest.lastIndexOf('.')) : rest;

/** The station (or bay) number in a member id, the side when it has one. */
export const placeOf = lookedUp((member): Place => {
  const side = /\.(street|yard)\b/.exec(member)?.[1] as Side | undefined;
  const station = /\.(\d+)/.exec(member)?.[1];
  return { station: station === undefined ? undefined : Number(station), side };
});
type Place = { readonly station: number | undefined; readonly side: Side | undefined };
