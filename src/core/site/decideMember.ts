import { boardIds } from '../level/planted';
import { spread } from '../level/draw';
import { lastStation, sidesOf, upperStations } from '../level/layout';
import type { Side } from '../roof/side';
import type { Of } from './action';
import type { Decision } from './attempt';
import { happen, refuse } from './decision';
import { fastened, nailedInFull } from './holding';
import { placeOf, rafterId, type BlockId, type BoardId, type MemberId, type RafterId } from './ids';
import { blockLength, clearBay, thickness } from './posed';
import { landRidge } from './decideRidge';
import { takeOutPost } from './decidePost';
import type { Standing } from './standing';
import type { SiteState } from './state';
import { figuredX } from './truePlate';

/** Acts on members: put up, trim, swap, take out. */

export const decidePlace = (standing: Standing, action: Of<'place'>): Decision => {
  const { member } = action;
  if (standing.site.members[member]) return refuse('alreadyThere');
  if (member === 'ridge') return landRidge(standing, action);
  if (member.startsWith('rafter.')) return placeRafter(standing, action);
  if (member.startsWith('block.')) return placeBlock(standing, action);
  if (/^(collar|strap)\./.test(member)) return placeUpper(standing, action);
  return refuse('notPlacedByHand');
};

const placeRafter = (standing: Standing, { member, at, board }: Of<'place'>): Decision => {
  const { site } = standing;
  const { side, station } = placeOf(member);
  if (!side || !station || station > lastStation(standing)) return refuse('noSuchPlace');
  if (!sidesOf(standing.level).includes(side)) return refuse('noSuchPlace');
  if (!site.ridge) return refuse('noRidge');
  const taken = board ?? freeBoards(standing)[0];
  if (!taken || !freeBoards(standing).includes(taken)) return refuse('noBoard');
  const x = at === 'block' ? againstBlock(standing, side, station) : onMark(standing, side, station);
  if (x === undefined) return refuse('nothingToHoldTo');
  return happen({ type: 'placed', member, at, board: taken, x });
};

/** Boards still on the pile, in the order they lie. */
export const freeBoards = (standing: Standing): readonly BoardId[] => {
  const used = new Set(Object.values(standing.site.members).map((placed) => placed?.board));
  return boardIds(standing.level).filter((board) => !used.has(board));
};

/** How far off a rafter lands that is set by eye, with no mark to set it to, inches. Ours. */
const byEye = 0.5;

const onMark = (standing: Standing, side: Side, station: number): number => {
  const marked = standing.site.marks[`plate.${side}`]?.[station - 1];
  const figured = figuredX(standing, station);
  if (marked !== undefined) return marked;
  const end = station === 1 || station === lastStation(standing);
  const place = `rafter.${side}.${station}`;
  return end ? figured : figured + spread({ seed: standing.seed, place, purpose: 'eye' }, byEye);
};

/** Tight against a block in the bay before it: what was put in so far, added up. */
const againstBlock = (standing: Standing, side: Side, station: number): number | undefined => {
  const before = standing.site.members[rafterId(side, station - 1)];
  if (!before) return undefined;
  return before.x + thickness(standing) + blockLength(standing, `block.${side}.${station - 1}`);
};

const placeBlock = (standing: Standing, { member, at }: Of<'place'>): Decision => {
  const { side, station } = placeOf(member);
  const near = side && station ? standing.site.members[rafterId(side, station)] : undefined;
  if (!side || !station || station >= lastStation(standing)) return refuse('noSuchPlace');
  if (!near) return refuse('nothingToNailTo');
  const x = near.x + thickness(standing) / 2;
  const placed = { type: 'placed', member, at, x } as const;
  const over = proud(standing, member as BlockId);
  if (over <= 0) return happen(placed);
  if (at === 'drop') return refuse('blockTooLong');
  const far = rafterId(side, station + 1);
  if (nailedInFull(standing.site, `heel:${far}`)) return refuse('raftersNailed');
  return happen(placed, { type: 'heelMoved', member: far, by: over, why: 'block' });
};

/** How much longer a block is than the bay it should go into, inches; 0 or less when it drops in. */
export const proud = (standing: Standing, block: BlockId): number => {
  const { side, station } = placeOf(block);
  const clear = side && station ? clearBay(standing, side, station) : undefined;
  return clear === undefined ? 0 : blockLength(standing, block) - clear;
};

const placeUpper = (standing: Standing, { member, at }: Of<'place'>): Decision => {
  const { station } = placeOf(member);
  const { site, level, seed } = standing;
  if (!station || !upperStations(level).includes(station)) return refuse('noSuchPlace');
  if (!site.members[rafterId('street', station)] || !site.members[rafterId('yard', station)])
    return refuse('nothingToNailTo');
  const lined = site.lines['chalk.street'] !== undefined && site.lines['chalk.yard'] !== undefined;
  if (at === 'line' && !lined) return refuse('noLine');
  const off = at === 'line' ? 0 : spread({ seed, place: member, purpose: 'eye' }, byEye);
  return happen({ type: 'placed', member, at, x: figuredX(standing, station), off });
};

/** The most that comes off a piece in one go, inches: what a cut end has to give. Ours. */
const sawReach = { ridge: 24, other: 2 } as const;

export const decideTrim = ({ site, ...rest }: Standing, { member, cut, by }: Of<'trim'>): Decision => {
  const limit = member === 'board.ridge' ? sawReach.ridge : sawReach.other;
  if (!(Math.abs(by) <= limit) || by === 0 || (by < 0 && cut !== 'wedge')) return refuse('moreThanItHas');
  const piece = pieceOf(site, member);
  if (!piece) return refuse('noSuchPiece');
  if (!known({ site, ...rest }, piece)) return refuse('noSuchPiece');
  if (held(site, member)) return refuse('nailedThere');
  return happen({ type: 'trimmed', member: piece, cut, by });
};

/** A cut follows the board, not the place it stands in. */
const pieceOf = (site: SiteState, member: MemberId | BoardId): MemberId | BoardId | undefined =>
  member.startsWith('rafter.') || member === 'ridge' ? site.members[member as RafterId]?.board : member;

const known = (standing: Standing, piece: string): boolean => {
  if (piece === 'board.ridge') return true;
  if (piece.startsWith('board.')) return (boardIds(standing.level) as readonly string[]).includes(piece);
  const { station } = placeOf(piece);
  return piece.startsWith('block.') && station !== undefined && station < lastStation(standing);
};

/** A rafter that is fastened cannot be cut where it stands; the ridge not once a rafter leans on it in full. */
const held = (site: SiteState, member: string): boolean => {
  const up = (Object.entries(site.members) as [MemberId, { board?: BoardId }][]).find(
    ([id, placed]) => id === member || placed.board === member,
  );
  const id = up?.[0];
  if (!id?.startsWith('rafter.')) return false;
  return fastened(site, `ridge:${id as RafterId}`) || fastened(site, `heel:${id as RafterId}`);
};

export const decideSwap = (standing: Standing, { member, board, turn }: Of<'swap'>): Decision => {
  const { site } = standing;
  if (!member.startsWith('rafter.') || !site.members[member]) return refuse('noSuchPiece');
  if (turn) return refuse('cutBoardCannotTurn');
  if (!freeBoards(standing).includes(board)) return refuse('noBoard');
  const id = member as RafterId;
  const home = [`ridge:${id}`, `heel:${id}`, `heelTie:${id}`].some(
    (joint) => (site.joints[joint as `heel:${RafterId}`]?.nails ?? 0) > 0,
  );
  if (home) return refuse('nailedThere');
  return happen({ type: 'swapped', member, board });
};

export const decideTakeOut = (standing: Standing, { member }: Of<'takeOut'>): Decision => {
  const { site } = standing;
  if (/^(string|chalk)\./.test(member))
    return site.lines[member as 'string.yard'] ? happen({ type: 'takenOut', member }) : refuse('noSuchPiece');
  if (!site.members[member as MemberId]) return refuse('noSuchPiece');
  if (member.startsWith('post.')) return takeOutPost(standing, member as `post.${number}`);
  if (
    Object.entries(site.joints).some(
      ([joint, so]) =>
        joint.split(':')[1]?.startsWith(member) && (so?.nails ?? 0) > 0 && !member.startsWith('brace'),
    )
  )
    return refuse('nailedThere');
  if (member === 'ridge' && Object.keys(site.members).some((id) => id.startsWith('rafter.')))
    return refuse('raftersOnIt');
  return happen({ type: 'takenOut', member });
};
