import { tools } from '../instruments/rows';
import type { PlannedAction, View } from '../order/crew/view';
import type { Action, Of } from '../site/action';
import type { RafterId } from '../site/ids';
import { between, type Decider } from './skill';
import { said } from './said';

/** Acts as they come out where the decision about them is wrong. Amounts are in inches and ours. */

type Read = Extract<PlannedAction, { type: 'read' }>;

/** A reading is off by one to four divisions, either way; an eye sees nothing where there is something. */
export const misread = (view: View, act: Read, how: number): Action | undefined => {
  const as = said(view, act);
  if (as?.type !== 'read') return undefined;
  if (act.tool === 'eye') return { ...as, said: typeof as.said === 'number' ? 0 : 'clean' };
  if (typeof as.said !== 'number') return as;
  const ticks = between(how, [-4, 3]);
  return { ...as, said: as.said + (ticks < 0 ? ticks : ticks + 1) * tools[act.tool].division };
};

/** The other call: what is sound is refused, what is not is taken. */
export const misjudged = ({ subject, call }: Of<'judge'>): Of<'judge'> => {
  if (call !== 'sound') return { type: 'judge', subject, call: 'sound' };
  const mends = subject.startsWith('plate.') || subject === 'board.ridge';
  return { type: 'judge', subject, call: mends ? 'mend' : 'swap' };
};

/** A rafter pushed off its mark. */
export const pushedOff = (member: RafterId, how: number): Action => ({
  type: 'shift',
  member,
  at: 'heel',
  by: signed(how, [3, 8]) / 16,
});

/** What can be set, cut or moved less true; undefined for what cannot. */
export const misfit = (act: Action, how: number): Action | undefined => {
  switch (act.type) {
    case 'mark':
      return { ...act, datum: 'last' };
    case 'place':
      return act.at === 'line' ? { ...act, at: 'mark' } : undefined;
    case 'trim':
      return act.member.startsWith('block.')
        ? { type: 'place', member: act.member as 'block.yard.1', at: 'drive' }
        : { ...act, by: act.by + between(how, [2, 4]) / 16 };
    case 'raise':
    case 'shift':
      return { ...act, by: notNothing(act.by + signed(how, [2, 6]) / 16) };
    case 'mendWall':
      return { ...act, by: notNothing(act.by + signed(how, [2, 3]) / 16) };
    case 'setPost':
      return act.height === 0 ? undefined : { ...act, height: act.height + signed(how, [2, 6]) / 16 };
    default:
      return undefined;
  }
};

/** As many from least to most, one way or the other. */
const signed = (how: number, [least, most]: readonly [number, number]): number => {
  const twice = how * 2;
  return twice < 1 ? -between(twice, [least, most]) : between(twice - 1, [least, most]);
};

/** Nobody moves a thing by nothing. */
const notNothing = (by: number): number => (by === 0 ? 1 / 16 : by);

/** Each of a kind of move at a place is a decision of its own. */
export const fitName = (act: Action | PlannedAction, times: number): string => {
  const what = 'member' in act ? act.member : 'on' in act ? act.on : 'wall' in act ? act.wall : '';
  const at = 'end' in act ? act.end : 'at' in act ? act.at : '';
  return `${act.type} ${what} ${at} ${times}`;
};

export const judged = (
  act: Of<'judge'>,
  decider: Decider,
  everyBoard: 'sound' | 'swap' | undefined,
): Action => {
  if (everyBoard && /^board\.\d+$/.test(act.subject))
    return { type: 'judge', subject: act.subject, call: everyBoard };
  return decider.right('judge', act.subject) ? act : misjudged(act);
};
