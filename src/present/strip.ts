import type { TaskCode } from '../core/order/crew/task';
import type { Attempt } from '../core/site/attempt';
import type { Action } from '../core/site/action';

/** One state of the roof worth looking at again: after so many acts, at so many crew-minutes, in the middle of what. */
export type Shot = { readonly steps: number; readonly minutes: number; readonly task: TaskCode };

/** The most states shown in a strip: more would be too small to read. */
const mostShots = 8;

/** States of the roof along the run: at the ends of stretches of work, and always the first and the last. */
export const stripOf = (attempt: Attempt): readonly Shot[] => {
  const shots = turns(attempt);
  if (shots.length <= mostShots) return shots;
  const keep = new Set(
    Array.from({ length: mostShots }, (_, i) => Math.round((i * (shots.length - 1)) / (mostShots - 1))),
  );
  return shots.filter((_, i) => keep.has(i));
};

const turns = ({ steps }: Attempt): readonly Shot[] => {
  const shots: Shot[] = [];
  let minutes = 0;
  let task: TaskCode = 'braceWalls';
  steps.forEach(({ action, outcome }, i) => {
    const next = taskOf(action) ?? task;
    if (next !== task && i > 0) shots.push({ steps: i, minutes, task });
    task = next;
    if (outcome.ok)
      minutes += outcome.events.reduce((sum, event) => sum + (event.type === 'spent' ? event.minutes : 0), 0);
  });
  return [...merged(shots), { steps: steps.length, minutes, task }];
};

/** A stretch of only a few acts is part of the next one. */
const leastStretch = 4;

const merged = (shots: readonly Shot[]): readonly Shot[] =>
  shots.filter((shot, i) => shot.steps - (shots[i - 1]?.steps ?? 0) >= leastStretch);

const taskOf = (action: Action): TaskCode | undefined => {
  switch (action.type) {
    case 'setTie':
      return 'tieWalls';
    case 'judge':
      return 'lookOver';
    case 'mark':
      return 'layOut';
    case 'place':
      return action.member === 'ridge'
        ? 'landRidge'
        : action.member.startsWith('rafter') || action.member.startsWith('block')
          ? 'stack'
          : 'upper';
    case 'nailOff':
      return action.joint.startsWith('heel:') ? 'heels' : undefined;
    case 'handOver':
      return 'handOver';
    default:
      return undefined;
  }
};
