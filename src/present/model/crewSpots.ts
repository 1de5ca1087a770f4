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
  const { lead, helper } = atSpots(work, 'stand');
  const { sling } = work.shown.site;
  const free = (task: Task): Task => ({ doing: task.doing, where: task.where, looks: middleOf(work) });
  const guides: Task = sling?.tagLine
    ? { ...free(helper), doing: 'guide', tool: 'tagLine' }
    : { ...helper, doing: 'look' };
  return { lead: sign ? { ...free(lead), doing: 'signal', sign } : lead, helper: guides, things: [] };
};
