import { tools } from '../instruments/rows';
import { boardIds } from '../level/planted';
import type { Level } from '../level/level';
import type { Action } from './action';
import type { Attempt, Decision } from './attempt';
import { freeBoards } from './decideMember';
import { apartAt } from './decideNails';
import { partsOfJoint, type BoardId, type JointId, type MemberId, type RafterId } from './ids';
import { gapsAt } from './posed';
import { openItems, type OpenItem } from './punch';
import type { SiteState } from './state';
import type { Reach } from './readings/reach';
import { shows } from './shows';
import { would } from './take';

/**
 * What a learner could see and read, and nothing of the truth behind it: the only thing that hands, lists and screens may
 * decide by. Readings come as what was said; `look` shows a tool's picture as a number, for whoever reads exactly.
 */
export type Observation = {
  readonly level: Level;
  readonly site: Pick<
    SiteState,
    | 'agreed'
    | 'ready'
    | 'people'
    | 'sling'
    | 'joints'
    | 'lines'
    | 'judged'
    | 'trims'
    | 'stops'
    | 'minutes'
    | 'unhooked'
    | 'down'
    | 'handedOver'
    | 'mends'
  >;
  readonly members: Readonly<Partial<Record<MemberId, BoardId | 'up'>>>;
  readonly ridgeOn: 'machine' | 'posts' | 'hands' | undefined;
  readonly marked: readonly string[];
  readonly boards: { readonly all: readonly BoardId[]; readonly free: readonly BoardId[] };
  readonly said: readonly Said[];
  readonly open: readonly OpenItem[];
  /** Light at a joint as an eye sees it from the platform: to the nearest quarter inch. */
  readonly seenApart: (joint: JointId) => number;
  /** Whether an eye sees a plumb cut a quarter inch wider open at one of its ends than at the other. */
  readonly seenAslant: (rafter: RafterId) => boolean;
  readonly look: (reach: Reach) => number | string | undefined;
  readonly would: (action: Action) => Decision;
};

export type Said = {
  readonly tool: string;
  readonly at: string;
  readonly from?: string;
  readonly said: number | string;
};

export const observe = (attempt: Attempt): Observation => {
  const { site, level } = attempt;
  return {
    level,
    site,
    members: Object.fromEntries(
      Object.entries(site.members).map(([id, placed]) => [id, placed?.board ?? 'up']),
    ),
    ridgeOn: site.ridge?.on,
    marked: Object.entries(site.marks)
      .filter(([, marks]) => marks.length > 0)
      .map(([on]) => on),
    boards: { all: boardIds(level), free: freeBoards(attempt) },
    get said() {
      return site.readings.map(({ tool, at, from, said }) => ({
        tool,
        at,
        said,
        ...(from === undefined ? {} : { from }),
      }));
    },
    get open() {
      return openItems(attempt);
    },
    seenApart: (joint) =>
      site.members[partsOfJoint(joint).member] ? Math.round(apartAt(attempt, joint) * 4) / 4 : 0,
    seenAslant: (rafter) => {
      const gaps = gapsAt(attempt, rafter);
      return gaps !== undefined && Math.abs(gaps.plumbBottom - gaps.plumbTop) >= tools.eye.division;
    },
    look: (reach) => shows(attempt, reach),
    would: (action) => would(attempt, action),
  };
};
