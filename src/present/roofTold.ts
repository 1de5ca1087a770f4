import { againstWall, sidesOf, stationsOf, upperStations } from '../core/level/layout';
import { ends, type Side } from '../core/roof/side';
import {
  blockId,
  ledgerJoint,
  partsOfJoint,
  placeOf,
  rafterId,
  type JointId,
  type MemberId,
} from '../core/site/ids';
import { jointRows } from '../core/site/jointRows';
import type { Observation } from '../core/site/observe';
import { postIds } from '../core/site/planPosts';
import { methodsOf, requiredFor } from '../core/site/required';
import { heldName, jointName, memberName } from './words/names';
import { lineAndHair, spokenLength } from './words/numbers';
import type { Messages } from './words/messages';
import { pick } from './words/spotNames';

/** The roof told in words from what a learner can see: what stands, what it hangs on, where light shows. No verdict. */

/** What can be seen; no tool is put to anything, and nothing is tried. */
export type Sight = Omit<Observation, 'look' | 'would'>;

/** What belongs together: station 0 is the walls and the ridge, any other its pair and the bay after it, from the top down. */
export type Group = { readonly station: number; readonly ids: readonly string[] };

export const roofGroups = ({ level, site }: Sight): readonly Group[] => {
  const count = stationsOf(level).length;
  const upper = methodsOf(level, site.agreed).upper === 'straps' ? 'strap' : 'collar';
  const tops = upperStations(level);
  const sides = sidesOf(level);
  const whole = [
    'ridge',
    ...(againstWall(level) ? [] : ['brace.along.1', ...ends.map((end) => `brace.across.${end}`)]),
    ...postIds(level),
    ...Object.keys(site.lines),
    ...sides.map((side) => `plate.${side}`),
    ...[...sides, ...ends].map((wall) => `brace.wall.${wall}`),
  ];
  const pairs = stationsOf(level).map((_, i): Group => {
    const n = i + 1;
    return {
      station: n,
      ids: [
        ...(tops.includes(n) ? [`${upper}.${n}`] : []),
        ...sides.map((side) => rafterId(side, n)),
        ...(n < count ? sides.map((side) => blockId(side, n)) : []),
        ...(level.plan.joists ? [`joist.${n}`] : []),
      ],
    };
  });
  return [{ station: 0, ids: whole }, ...pairs];
};

export const groupName = ({ spoken }: Messages, { level }: Sight, { station }: Group): string => {
  if (station === 0) return spoken.roof.whole;
  return station < stationsOf(level).length ? spoken.roof.bay(station) : spoken.roof.lastBay(station);
};

/** What is seen of one thing, in a few words, and what was read there last. */
export const thingSaid = (words: Messages, seen: Sight, id: string): string =>
  [stateSaid(words, seen, id), ...readingsSaid(words, seen, id)].join('; ');

/** Whether a reading was taken at a thing: its name is in the place, or the place is told by station. */
const readAtThing = (id: string, at: string): boolean => {
  const [kind, ...rest] = id.split('.');
  if (at.includes(':')) return partsOfJoint(at).member === id;
  if (kind === 'rafter') return [`layout.${rest.join('.')}`, `plane.${rest.join('.')}`].includes(at);
  if (kind === 'block') return at === `bay.${rest.join('.')}`;
  return at === id || at.startsWith(`${id}.`);
};

/** The last of each kind, as it was said. */
const readingsSaid = (words: Messages, seen: Sight, id: string): readonly string[] => {
  const here = seen.said.filter(({ at }) => readAtThing(id, at));
  const last = new Map(here.map((one) => [`${one.tool} ${one.at} ${one.from ?? ''}`, one]));
  return [...last.values()].map((one) => {
    const { line, side } = lineAndHair(Number(one.said));
    const value = [spokenLength(words, line), ...(side === 'on' ? [] : [words.ui.act.hairSaid[side]])];
    return words.spoken.roof.read(heldName(words, one), value.join(' '));
  });
};

const stateSaid = (words: Messages, seen: Sight, id: string): string => {
  const { roof } = words.spoken;
  if (id.startsWith('plate.')) return plateSaid(words, seen, id);
  if (/^(string|chalk|tail)\./.test(id)) return roof.there;
  const up = seen.members[id as MemberId];
  if (id === 'ridge' && seen.ridgeOn === undefined) return `${roof.absent}, ${markedSaid(words, seen, id)}`;
  if (id === 'ridge')
    return [roof.heldBy[carrierOf(seen)], markedSaid(words, seen, id), ...studsSaid(words, seen)].join(', ');
  if (up === undefined) return roof.absent;
  const board = up === 'up' ? [] : [memberName(words, up)];
  const split = seen.open.some(({ what, at }) => what === 'split' && at === id) ? [roof.split] : [];
  const joints = jointsOf(seen, id).map((joint) => jointSaid(words, seen, joint));
  return [...board, ...joints, ...tailSaid(words, seen, id), ...split].join('; ') || roof.there;
};

/** Where tails were left long: whether this one is cut. */
const tailSaid = (
  { spoken: { roof } }: Messages,
  { level, site, members }: Sight,
  id: string,
): readonly string[] => {
  const long = requiredFor(level, { agreed: site.agreed, members: {} }).tails.some((tail) => tail === id);
  const board = members[id as MemberId];
  if (!long || board === undefined) return [];
  return [site.trims[board]?.tail === undefined ? roof.tailLong : roof.tailCut];
};

/** At how many of its studs a ledger is nailed. */
const studsSaid = ({ spoken: { roof } }: Messages, { level, site }: Sight): readonly string[] => {
  if (!againstWall(level)) return [];
  const all = stationsOf(level).map((_, i) => ledgerJoint(i + 1));
  return [
    roof.studs(
      all.filter((joint) => (site.joints[joint]?.nails ?? 0) >= jointRows.ledger.full).length,
      all.length,
    ),
  ];
};

/** What is seen to carry the ridge: a machine as long as the sling is on it, posts, its end pairs or its wall, or people. */
const carrierOf = ({ level, site, members, ridgeOn }: Sight): 'machine' | 'posts' | 'rafters' | 'hands' => {
  if (ridgeOn === 'machine' && site.sling !== undefined) return 'machine';
  if (postIds(level).some((id) => members[id] !== undefined)) return 'posts';
  const holds = (joint: JointId): boolean => site.joints[joint] !== undefined;
  const wall = againstWall(level);
  const ofEnd = (n: number): readonly JointId[] =>
    wall
      ? [ledgerJoint(n)]
      : sidesOf(level).flatMap((side): readonly JointId[] => [
          `ridge:${rafterId(side, n)}`,
          `heel:${rafterId(side, n)}`,
        ]);
  const fast = [1, stationsOf(level).length].every((n) => ofEnd(n).every(holds));
  return fast || ridgeOn !== 'hands' ? 'rafters' : 'hands';
};

const markedSaid = ({ spoken: { roof } }: Messages, seen: Sight, id: string): string =>
  seen.marked.includes(id) ? roof.marked : roof.unmarked;

const plateSaid = (words: Messages, seen: Sight, id: string): string => {
  const mended = Object.keys(seen.site.mends).some((at) => at.startsWith(`${id}.`));
  return [markedSaid(words, seen, id), ...(mended ? [words.spoken.roof.mended] : [])].join('; ');
};

/** Joints of a member in the order they are made: those of the finished job, and any other that has a nail in it. */
const jointsOf = (seen: Sight, id: string): readonly JointId[] => {
  const { level, site } = seen;
  const required = requiredFor(level, { agreed: site.agreed, members: {} }).joints;
  const nailed = Object.keys(site.joints) as JointId[];
  return [...new Set([...required, ...nailed])].filter((joint) => partsOfJoint(joint).member === id);
};

const jointSaid = (words: Messages, seen: Sight, joint: JointId): string => {
  const { roof } = words.spoken;
  const { tacks = 0, nails = 0 } = seen.site.joints[joint] ?? {};
  const held = [
    ...(tacks > 0 ? [words.ui.state.tacks(tacks)] : []),
    ...(nails > 0 ? [words.ui.state.nails(nails)] : []),
  ];
  const light = seen.seenApart(joint);
  const { kind } = partsOfJoint(joint);
  const side = kind === 'joistPlate' ? placeOf(joint.slice(joint.lastIndexOf('.'))).side : undefined;
  const where = [jointName(words, joint).split(', ').at(-1), ...(side ? [words.trade.side[side]] : [])].join(
    ' ',
  );
  return [
    `${where} ${held.length > 0 ? held.join(', ') : roof.bare}`,
    ...(light > 0 ? [roof.light(spokenLength(words, light))] : []),
  ].join(', ');
};

/** The whole in a few sentences: ridge, pairs, tacks, what lies and hangs, where people are. */
export const roofSaid = (words: Messages, seen: Sight): string => {
  const { roof } = words.spoken;
  const { site, level } = seen;
  const sides = sidesOf(level);
  if (site.down !== undefined) return `${words.ui.site.down} ${pick(words.ui.site.fell, site.down)}`;
  const stations = stationsOf(level).map((_, i) => i + 1);
  const up = (id: string): boolean => seen.members[id as MemberId] !== undefined;
  const pairs = stations.filter((n) => sides.every((side) => up(rafterId(side, n)))).length;
  const count = (kind: string): number =>
    Object.keys(seen.members).filter((id) => id.startsWith(`${kind}.`)).length;
  const bays = sides.length * (stations.length - 1);
  const tops = upperStations(level).length;
  return [
    seen.ridgeOn === undefined ? roof.notUp : roof[carrierOf(seen)],
    ...(seen.ridgeOn === undefined ? [] : studsSaid(words, seen).map(sentence)),
    ...(level.plan.joists ? [roof.joists(count('joist'), stations.length)] : []),
    roof.pairs(pairs, stations.length),
    ...sides.flatMap((side) => tackedSaid(words, seen, side)),
    roof.blocks(count('block'), bays),
    ...(tops > 0 ? [roof.tops(count('collar') + count('strap'), tops)] : []),
    ...(['lead', 'helper'] as const).map((who) =>
      roof.who(words.trade.person[who], pick(words.trade.spot, site.people[who])),
    ),
  ].join(' ');
};

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

const tackedSaid = (words: Messages, seen: Sight, side: Side): readonly string[] => {
  const hanging = Object.entries(seen.site.joints).flatMap(([joint, so]) => {
    const { member } = partsOfJoint(joint);
    return member.startsWith('rafter.') && placeOf(member).side === side && (so?.tacks ?? 0) > 0
      ? [member]
      : [];
  });
  const n = new Set(hanging).size;
  return n === 0 ? [] : [words.spoken.roof.tacked(words.trade.side[side], n)];
};
