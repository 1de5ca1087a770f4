import { ridgeOverlength } from '../level/asFound';
import { middleStations, sidesOf, upperStations, stationsOf } from '../level/layout';
import type { Level } from '../level/level';
import type { Stage } from '../level/stages';
import { stageOfJoint, stageOfMember } from '../site/stageOf';
import type { Methods } from '../level/method';
import type { SiteEvent } from '../site/event';
import type { JointId, MemberId, RafterId } from '../site/ids';
import { rafterId } from '../site/ids';
import { ends } from '../roof/side';
import { fastened } from '../site/holding';
import { gapsAt } from '../site/posed';
import { finished } from '../site/required';
import type { Standing } from '../site/standing';
import { tailCut } from '../site/tailLong';

/**
 * One thing that is so on the site, as rules speak of it: a member id (it stands), a joint id (nailed in full),
 * `tack:` and a joint id (fastened at all), `mark:plate.yard`, `string.yard`, `chalk.yard`, `tail.yard` (the line
 * tails are cut to), `tail:rafter.yard.3` (cut there), `ready:ladder`, `fixed:post.1` (head and foot),
 * `out:post.1`, `ridgeLength`, `settled`, `unhooked`. Site and order list answer the same questions.
 */
export type Fact = string;
export type Facts = (fact: Fact) => boolean;

/** What rules need to know of the job besides its facts. */
export type Job = { readonly level: Level; readonly methods: Methods };

/** Facts as the site has them. */
export const factsOf =
  (standing: Standing): Facts =>
  (fact) => {
    const { site } = standing;
    const [head = '', rest = ''] = fact.split(/:(.*)/);
    if (head === 'mark') return (site.marks[rest as 'ridge'] ?? []).length > 0;
    if (head === 'ready') return site.ready[rest as 'ladder'] !== undefined;
    if (head === 'tack') return fastened(site, rest as JointId);
    if (head === 'tail') return tailCut(site, rest as RafterId);
    if (head === 'fixed') return site.members[rest as MemberId]?.how === 'both';
    if (head === 'out') return site.members[rest as MemberId] === undefined;
    if (fact === 'ridgeLength') return lengthSettled(standing);
    if (fact === 'settled') return heightSettled(standing);
    if (fact === 'unhooked') return site.unhooked;
    if (/^(string|chalk|tail)\./.test(fact)) return site.lines[fact as 'string.yard'] !== undefined;
    return rest === '' ? site.members[fact as MemberId] !== undefined : finished(site, fact as JointId);
  };

/** How near the figure a cut ridge counts as settled, inches. Ours: what a tape and a saw do without care. */
const lengthNear = 0.25;

const lengthSettled = (standing: Standing): boolean =>
  standing.site.agreed.ridgeLength === 'wild' ||
  Math.abs(ridgeOverlength(standing) - (standing.site.trims['board.ridge']?.end ?? 0)) <= lengthNear;

/** Both end pairs sit: seats bear and heel cuts are hard, within the level's tolerance. */
const heightSettled = (standing: Standing): boolean => {
  const last = stationsOf(standing.level).length;
  return [1, last].every((station) =>
    sidesOf(standing.level).every((side) => {
      const gaps = gapsAt(standing, rafterId(side, station));
      const { seat } = standing.level.tolerances;
      return gaps !== undefined && gaps.seat <= seat && gaps.heelCut <= seat;
    }),
  );
};

/** The fact an event brings about, when rules know it. */
export const factOf = (event: SiteEvent): Fact | undefined => {
  switch (event.type) {
    case 'placed':
    case 'tieSet':
    case 'braced':
    case 'postSet':
      return event.member;
    case 'ridgeLanded':
      return 'ridge';
    case 'tacked':
      return `tack:${event.joint}`;
    case 'nailed':
      return event.joint;
    case 'marked':
      return `mark:${event.on}`;
    case 'lined':
      return event.line;
    case 'madeReady':
      return `ready:${event.what}`;
    case 'takenOut':
      return `out:${event.member}`;
    case 'tailCut':
      return `tail:${event.member}`;
    case 'unhooked':
      return 'unhooked';
    default:
      return undefined;
  }
};

/** The stage of the job in which a fact comes about where all is done in order. */
export const stageOfFact = (level: Level, fact: Fact): Stage => {
  const [head = '', rest = ''] = fact.split(/:(.*)/);
  const built = { level, site: { members: {} } };
  if (['mark', 'ready'].includes(head) || fact === 'ridgeLength') return 'ground';
  if (head === 'tack') return stageOfJoint(built, rest as JointId);
  if (head === 'out' || head === 'tail') return 'close';
  if (fact === 'settled' || head === 'fixed') return 'ridge';
  if (fact === 'unhooked') return 'hold';
  if (fact.startsWith('string')) return 'stack';
  if (/^(chalk|tail)\./.test(fact)) return 'close';
  return rest === '' ? stageOfMember(built, fact as MemberId) : stageOfJoint(built, fact as JointId);
};

/** Stations of a level, first to last, and the ones that matter to rules. */
export const places = (
  level: Level,
): {
  readonly all: readonly number[];
  readonly last: number;
  readonly middle: readonly number[];
  readonly upper: readonly number[];
} => {
  const xs = stationsOf(level);
  return {
    all: xs.map((_, i) => i + 1),
    last: xs.length,
    middle: middleStations(level),
    upper: upperStations(level),
  };
};

/** Ends of a building, for rules that want one thing at each. */
export const bothEnds = ends;
