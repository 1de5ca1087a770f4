import { againstWall, sidesOf, stationsOf, upperStations } from '../level/layout';
import type { Level } from '../level/level';
import type { Methods } from '../level/method';
import { beyond } from '../level/stages';
import { ends, sides } from '../roof/side';
import { blockId, ledgerJoint, rafterId, type JointId, type MemberId, type RafterId } from './ids';
import { jointRows } from './jointRows';
import { partsOfJoint } from './ids';
import { stayingPosts } from './planPosts';
import { stageOfJoint, stageOfMember } from './stageOf';
import type { SiteState } from './state';

/** Everything the finished job must hold: members in place, joints at their full count, tails cut that were left long. */
export type Required = {
  readonly members: readonly MemberId[];
  readonly joints: readonly JointId[];
  readonly tails: readonly RafterId[];
};

export type Agreed = Partial<Methods>;

/** The level's usual way where nothing else was agreed. */
export const methodsOf = (level: Level, agreed: Agreed): Methods => ({
  hang: agreed.hang ?? level.methods.hang[0] ?? 'posts',
  ties: agreed.ties ?? level.methods.ties[0] ?? 'joistsFirst',
  stack: agreed.stack ?? level.methods.stack[0] ?? 'oneSide',
  upper: agreed.upper ?? level.methods.upper[0] ?? 'collars',
  tails: agreed.tails ?? level.methods.tails[0] ?? 'first',
  ridgeLength: agreed.ridgeLength ?? level.methods.ridgeLength[0] ?? 'cut',
});

export const leavesTailsLong = (level: Level, agreed: Agreed): boolean =>
  methodsOf(level, agreed).tails === 'snapped';

/** What has to stand where the level ends, for the way the crew agreed to build. */
export const requiredFor = (level: Level, site: Pick<SiteState, 'agreed' | 'members'>): Required => {
  const whole = wholeFor(level, site.agreed);
  const range = level.stages;
  if (!range) return whole;
  const built = { level, site };
  return {
    members: whole.members.filter((id) => !beyond(range, stageOfMember(built, id))),
    joints: whole.joints.filter((joint) => !beyond(range, stageOfJoint(built, joint))),
    tails: beyond(range, 'close') ? [] : whole.tails,
  };
};

const wholeFor = (level: Level, agreed: Agreed): Required => {
  const known = wholes.get(level) ?? new WeakMap<Agreed, Required>();
  wholes.set(level, known);
  const whole = known.get(agreed) ?? listed(level, agreed);
  known.set(agreed, whole);
  return whole;
};
const wholes = new WeakMap<Level, WeakMap<Agreed, Required>>();

const listed = (level: Level, agreed: Agreed): Required => {
  const count = stationsOf(level).length;
  const all = Array.from({ length: count }, (_, i) => i + 1);
  const bays = all.slice(0, -1);
  const upper = methodsOf(level, agreed).upper;
  const sides = sidesOf(level);
  const wall = againstWall(level);
  const rafters = sides.flatMap((side) => all.map((n) => rafterId(side, n)));
  const blocks = sides.flatMap((side) => bays.map((n) => blockId(side, n)));
  const ties = level.plan.joists ? all.map((n) => `joist.${n}` as const) : [];
  const tops = upperStations(level).map((n) =>
    upper === 'collars' ? (`collar.${n}` as const) : (`strap.${n}` as const),
  );
  const braces = wall ? [] : [...ends.map((end) => `brace.across.${end}` as const), 'brace.along.1' as const];
  const walls = [...sides, ...ends].map((wall) => `brace.wall.${wall}` as const);
  return {
    members: ['ridge', ...stayingPosts(level), ...rafters, ...blocks, ...ties, ...tops, ...braces, ...walls],
    joints: [
      ...(wall ? all.map(ledgerJoint) : []),
      ...rafters.flatMap((id) => rafterJoints(level, id)),
      ...blocks.flatMap(blockJoints),
      ...tops.flatMap(topJoints),
    ],
    tails: leavesTailsLong(level, agreed) ? rafters : [],
  };
};

const rafterJoints = (level: Level, id: ReturnType<typeof rafterId>): readonly JointId[] =>
  level.plan.joists ? [`ridge:${id}`, `heel:${id}`, `heelTie:${id}`] : [`ridge:${id}`, `heel:${id}`];

const blockJoints = (id: ReturnType<typeof blockId>): readonly JointId[] => [
  `blockEnd:${id}.near`,
  `blockEnd:${id}.far`,
  `blockPlate:${id}`,
];

const topJoints = (id: `collar.${number}` | `strap.${number}`): readonly JointId[] =>
  id.startsWith('collar')
    ? sides.map((side) => `collarEnd:${id as `collar.${number}`}.${side}` as const)
    : [`strap:${id as `strap.${number}`}`];

/** True when a joint has its full count of nails home. */
export const finished = (site: SiteState, joint: JointId): boolean =>
  (site.joints[joint]?.nails ?? 0) >= jointRows[partsOfJoint(joint).kind].full;
