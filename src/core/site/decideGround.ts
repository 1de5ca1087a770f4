import { againstWall, sidesOf, stationsOf } from '../level/layout';
import { spread } from '../level/draw';
import { ends, type End, type Side, type Wall } from '../roof/side';
import { topicsOn } from '../level/topics';
import type { Of } from './action';
import type { Decision } from './attempt';
import { happen, refuse, stop } from './decision';
import { loadHangs, nailedInFull } from './holding';
import { rafterId, type BraceId, type TieId } from './ids';
import { shows } from './shows';
import type { Standing } from './standing';

/** Acts on the ground, on the walls and among the crew. */

export const decideAgree = ({ level, site }: Standing, { topic, value }: Of<'agree'>): Decision => {
  if (topic === 'signals')
    return value === 'standard' ? happen({ type: 'agreed', topic, value }) : refuse('notASignalCode');
  if (!topicsOn(level).includes(topic)) return refuse('nothingToAgree');
  if (topic === 'tails' && Object.keys(site.members).some((id) => id.startsWith('rafter.')))
    return refuse('raftersStand');
  const accepted: readonly string[] = level.methods[topic];
  return accepted.includes(value) ? happen({ type: 'agreed', topic, value }) : refuse('notBuiltThisWayHere');
};

export const decideMakeReady = (_standing: Standing, { what, at }: Of<'makeReady'>): Decision => {
  if (what === 'anchor' && (at === 'ridge' || at === 'load' || at === 'rafter')) return stop('tiedToUnbuilt');
  if (what === 'anchor' && at === 'site') return refuse('anchorNeedsAPlace');
  return happen({ type: 'madeReady', what, at });
};

export const decideStand = ({ site }: Standing, { who, where }: Of<'stand'>): Decision => {
  if (where === 'plate') return stop('topPlate');
  if (where === 'path' && loadHangs(site)) return stop('underTheLoad');
  if (where === 'platform' && site.ready.platform === undefined) return refuse('noPlatform');
  if (where === 'ladder' && site.ready.ladder === undefined) return refuse('noLadder');
  return happen({ type: 'stood', who, where });
};

export const decideRead = (standing: Standing, { tool, at, from, said }: Of<'read'>): Decision => {
  const shown = shows(standing, from === undefined ? { tool, at } : { tool, at, from });
  if (shown === undefined) return refuse('toolCannotShow');
  if (typeof said !== typeof shown) return refuse('notAReading');
  return happen({ type: 'wasRead', tool, at, shown, said, ...(from === undefined ? {} : { from }) });
};

/** A thing may be judged once something was read at it. */
export const decideJudge = ({ level, site }: Standing, { subject, call, why }: Of<'judge'>): Decision => {
  const known = /^(board\.(\d+|ridge)|plate\.(street|yard))$/.test(subject);
  if (!known || !isBuilt(level, subject)) return refuse('notToBeJudged');
  const looked = site.readings.some(({ at }) => at === subject || at.startsWith(`${subject}.`));
  if (!looked) return refuse('notLookedAt');
  return happen({ type: 'judged', subject, call, ...(why === undefined ? {} : { why }) });
};

/** No plate on a side that is not built. */
const isBuilt = (level: Standing['level'], plate: string): boolean =>
  !plate.startsWith('plate.') || sidesOf(level).some((side) => plate.startsWith(`plate.${side}`));

/** How much a tape gains on each hop when it is held to the last mark and not to the datum, inches. Ours. */
const hopCreep = 1 / 32;

export const decideMark = (standing: Standing, action: Of<'mark'>): Decision => {
  const { on, datum, faces } = action;
  if (!isBuilt(standing.level, on)) return refuse('noSuchWall');
  if (on === 'ridge' && faces === 1) return happen({ type: 'marked', on, datum, marks: [] });
  return happen({ type: 'marked', on, datum, marks: markedAt(standing, action) });
};

const markedAt = ({ level, seed }: Standing, { on, datum, spacing }: Of<'mark'>): readonly number[] => {
  const stations = stationsOf(level);
  const { length, rafter } = level.plan;
  const last = stations.length - 1;
  const nominal = stations.map((x, i) =>
    i === 0 || i === last ? x : spacing === level.plan.spacing ? x : Math.min(length, i * spacing),
  );
  return nominal.map((x, i) => {
    if (i === 0 || i === last) return x;
    const wander = spread(
      { seed, place: `${on}.${i + 1}`, purpose: 'mark' },
      level.asFound.ranges.markWander,
    );
    const fromB = datum === 'endB' ? length - (nominal[last - i] ?? x) : x;
    return Math.max(rafter.thickness, fromB + wander + (datum === 'last' ? i * hopCreep : 0));
  });
};

/** The most a crew shims, planes or pulls a wall in one go, inches. Ours. */
const wallReach = 1;

export const decideMendWall = ({ level, site }: Standing, { wall, how, by }: Of<'mendWall'>): Decision => {
  const found = /^plate\.(street|yard)\.(A|mid|B)$/.exec(wall);
  if (!found || !isBuilt(level, wall)) return refuse('noSuchWall');
  if (!(Math.abs(by) <= wallReach) || by === 0) return refuse('beyondReach');
  const side = found[1] as Side;
  const nailed = stationsOf(level).some((_, i) => nailedInFull(site, `heel:${rafterId(side, i + 1)}`));
  if (nailed) return refuse('raftersNailed');
  return happen({ type: 'wallMended', wall, how, by });
};

const tieNames = { joist: 'joist', rafterTie: 'rafterTie', cross: 'crossTie' } as const;

export const decideSetTie = ({ level, site }: Standing, { kind, station }: Of<'setTie'>): Decision => {
  const member: TieId = `${tieNames[kind]}.${station}`;
  if (againstWall(level) || !(station in stationNumbers(level))) return refuse('noBearing');
  if (site.members[member]) return refuse('alreadyThere');
  return happen({ type: 'tieSet', member });
};

const stationNumbers = (level: Standing['level']): Readonly<Record<number, true>> =>
  Object.fromEntries(stationsOf(level).map((_, i) => [i + 1, true as const]));

export const decideBrace = ({ level, site }: Standing, { kind, from }: Of<'brace'>): Decision => {
  const member = braceId(level, kind, from);
  if (!member || (kind !== 'wall' && againstWall(level))) return refuse('nothingToNailTo');
  if (site.members[member]) return refuse('alreadyThere');
  if (kind !== 'wall' && !site.ridge) return refuse('nothingToNailTo');
  return happen({ type: 'braced', member });
};

const braceId = (level: Standing['level'], kind: Of<'brace'>['kind'], from: string): BraceId | undefined => {
  if (kind === 'along') return 'brace.along.1';
  if (kind === 'across')
    return (ends as readonly string[]).includes(from) ? `brace.across.${from as End}` : undefined;
  return ([...sidesOf(level), ...ends] as readonly string[]).includes(from)
    ? `brace.wall.${from as Wall}`
    : undefined;
};

/** A line needs both its ends: a rafter of the side at each. `to` is the rafter at the rake. */
export const decideLine = ({ site }: Standing, { kind, from, to, off }: Of<'line'>): Decision => {
  const [a, b] = [from, to].map((id) => /^rafter\.(street|yard)\.\d+$/.exec(id)?.[1] as Side | undefined);
  if (!a || a !== b || from === to) return refuse('endsNotThere');
  if (!site.members[from as `rafter.yard.1`] || !site.members[to as `rafter.yard.1`])
    return refuse('endsNotThere');
  return happen({ type: 'lined', line: `${kind}.${a}`, side: a, off });
};

export const decideHandOver = (): Decision => happen({ type: 'handedOver' });
