import { spread } from '../level/draw';
import type { Side } from '../roof/side';
import type { Of } from './action';
import type { Decision } from './attempt';
import { happen, refuse } from './decision';
import { placeOf, type RafterId } from './ids';
import type { PlatePose, RafterPose } from './pose';
import { pose } from './posed';
import type { Standing } from './standing';
import { leavesTailsLong } from './required';
import { tailCut } from './tailLong';

/** Where tails end against a straight eave, and how they are cut in place. */

/** How far a saw wanders off a chalk line overhead, and how far off a tail ends that is cut by eye, inches. Ours. */
const sawStray = 1 / 32;
const eyeStray = 1 / 2;

/** A straight eave so far out from a plate's two ends: level distance from the centre line at x. */
export const eaveAt = ({ A, B }: PlatePose, x: number, over: number): number =>
  Math.abs(A.y + ((B.y - A.y) * (x - A.x)) / (B.x - A.x)) + over;

/** How far a rafter's tail ends past (+) or short of a straight eave at the plan's overhang, inches. */
export const tailOff = (standing: Standing, rafter: RafterPose): number => {
  const { overhang } = standing.level.plan;
  const end = rafter.heel.out + overhang + rafter.tail;
  return end - eaveAt(pose(standing).plates[rafter.side], rafter.x.heel, overhang);
};

/** Along the line where one is snapped, else by eye. */
export const decideCutTail = (standing: Standing, { member }: Of<'cutTail'>): Decision => {
  const { level, site, seed } = standing;
  const rafter = pose(standing).rafters[member as RafterId];
  if (!rafter) return refuse('noSuchPiece');
  if (!leavesTailsLong(level, site.agreed)) return refuse('tailsAreCut');
  if (tailCut(site, member as RafterId)) return refuse('tailsAreCut');
  if (site.ready.ladder === undefined) return refuse('noLadder');
  const side = placeOf(member).side as Side;
  const line = site.lines[`tail.${side}`];
  const stray = spread({ seed, place: member, purpose: 'tailSawn' }, line ? sawStray : eyeStray);
  const wanted = line
    ? eaveAt(pose(standing).plates[side], rafter.x.heel, line.off)
    : rafter.heel.out + level.plan.overhang;
  const by = rafter.heel.out + level.plan.overhang + rafter.tail - wanted - stray;
  return by <= 0
    ? refuse('moreThanItHas')
    : happen({ type: 'tailCut', member: member as RafterId, board: rafter.board, by });
};
