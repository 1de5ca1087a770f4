import { add, type Vec3 } from '../../core/geometry/vector';
import type { Person } from '../../core/site/action';
import type { CrewAtWork, Task, Thing } from './task';
import { ridgeAt, ridgeSide, type Work } from './workPlaces';

/** The two where the site's spots have them: looking on, talking, at a load that hangs. */

export const both = (lead: Task | undefined, helper: Task | undefined, things: readonly Thing[] = []) =>
  lead && helper ? { lead, helper, things } : undefined;

/** The middle of the work: what somebody looks at who is not at it. */
const middleOf = (work: Work): Vec3 => add(ridgeAt(work, work.scheme.length / 2), [0, 0, -8]);

export const atSpot = (work: Work, who: Person, doing: Task['doing']): Task => {
  const spot = work.shown.site.people[who];
  const { length } = work.scheme;
  const ridge = work.shown.pose.ridge && (spot === 'beside' || spot === 'path');
  const x = length * (who === 'lead' ? 0.6 : 0.4);
  const held = ridge && spot === 'beside' ? ridgeSide(work, x, -1) : undefined;
  return {
    doing,
    where: { on: 'spot', spot },
    looks: held?.at ?? middleOf(work),
    ...(held ? { works: held.at, holds: held.grip } : {}),
  };
};

export const atSpots = (work: Work, doing: Task['doing']): CrewAtWork => ({
  lead: atSpot(work, 'lead', doing),
  helper: atSpot(work, 'helper', doing),
  things: [],
});

export const talking = (work: Work): CrewAtWork => atSpots(work, 'talk');

/** One gives the signals, the other has the tag line where there is one. */
export const atTheLoad = (work: Work, sign: Task['sign']): CrewAtWork => {
  const { lead } = atSpots(work, 'stand');
  return {
    lead: sign ? { ...free(work, lead), doing: 'signal', sign } : lead,
    helper: guiding(work),
    things: [],
  };
};

/** Whoever has the tag line, or looks on where there is none. */
export const guiding = (work: Work): Task => {
  const helper = atSpot(work, 'helper', 'look');
  return work.shown.site.sling?.tagLine ? { ...free(work, helper), doing: 'guide', tool: 'tagLine' } : helper;
};

const free = (work: Work, { doing, where }: Task): Task => ({ doing, where, looks: middleOf(work) });
