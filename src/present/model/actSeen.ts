import type { Vec3 } from '../../core/geometry/vector';
import { lerp } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import type { Action } from '../../core/site/action';
import type { Decision } from '../../core/site/attempt';
import { partsOfJoint, placeOf, type BlockId, type RafterId } from '../../core/site/ids';
import type { Shown } from './scheme';

/** The act that led to what is shown: which one of its run, what it was, and what came of it. */
export type Act = {
  readonly step: number;
  readonly action: Action;
  readonly outcome: Decision;
};

/** A tool at work at a place, so many times. */
export type ToolWork = {
  readonly tool: 'hammer' | 'nailer' | 'puller' | 'saw';
  readonly at: Vec3;
  readonly times: number;
};

/** More strokes than this are not shown: everybody has understood. Ours. */
const mostStrokes = 4;

/** What a tool is seen to do in an act, undefined where no tool strikes or cuts anything that shows. */
export const toolWorkIn = (shown: Shown, { action, outcome }: Act): ToolWork | undefined => {
  if (!outcome.ok) return undefined;
  if (action.type === 'trim' || action.type === 'cutTail') {
    const at = cutPlace(shown, action.member);
    return at && { tool: 'saw', at, times: 3 };
  }
  const nailed = outcome.events.find(
    (event) => event.type === 'tacked' || event.type === 'nailed' || event.type === 'drawn',
  );
  if (!nailed) return undefined;
  const at = jointPlace(shown, nailed.joint);
  if (!at) return undefined;
  const tool = nailed.type === 'tacked' ? 'hammer' : nailed.type === 'nailed' ? 'nailer' : 'puller';
  return { tool, at, times: Math.max(1, Math.min(mostStrokes, nailed.nails)) };
};

/** Where nails go in, a little below the top edge. */
export const jointPlace = ({ pose, level, figured }: Shown, joint: string): Vec3 | undefined => {
  const { kind, member } = partsOfJoint(joint);
  const rafter = pose.rafters[member as RafterId];
  if (rafter) {
    const sign = signOf(rafter.side);
    if (kind === 'ridge') return [rafter.x.ridge, sign * rafter.top.out, rafter.top.z - 2];
    return [rafter.x.heel, sign * (rafter.heel.out - 2), rafter.heel.z - 1.5];
  }
  const block = pose.blocks[member as BlockId];
  const { station, side } = placeOf(joint);
  if (block) {
    const inBay = joint.endsWith('.far') ? 1 : joint.endsWith('.near') ? 0 : 0.5;
    const near = pose.rafters[`rafter.${block.side}.${block.bay}`];
    const far = pose.rafters[`rafter.${block.side}.${block.bay + 1}`];
    if (!near || !far) return undefined;
    const end = (r: typeof near): Vec3 => [r.x.heel, signOf(r.side) * (r.heel.out - 1), r.heel.z - 2];
    return lerp(end(near), end(far), inBay);
  }
  if (member.startsWith('collar.')) return collarEnd(pose, station ?? 1, side ?? 'street');
  if (/^(joist|rafterTie|crossTie)\./.test(member)) {
    const x = figured.layout.stations[(station ?? 1) - 1] ?? 0;
    return [x, signOf(side ?? 'street') * (level.plan.span / 2 - 2), 3];
  }
  return undefined;
};

const collarEnd = (pose: Shown['pose'], station: number, side: 'street' | 'yard'): Vec3 | undefined => {
  const rafter = pose.rafters[`rafter.${side}.${station}`];
  if (!rafter) return undefined;
  const sign = signOf(side);
  return lerp(
    [rafter.x.heel, sign * rafter.heel.out, rafter.heel.z],
    [rafter.x.ridge, sign * rafter.top.out, rafter.top.z],
    2 / 3,
  );
};

/** The plumb cut of a rafter that stands; a board on the ground has no place on the drawing. */
const cutPlace = ({ pose }: Shown, member: string): Vec3 | undefined => {
  const rafter = pose.rafters[member as RafterId];
  return rafter && [rafter.x.ridge, signOf(rafter.side) * rafter.top.out, rafter.top.z];
};
