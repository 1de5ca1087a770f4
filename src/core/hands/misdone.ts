import { tools } from '../instruments/rows';
import type { PlannedAction, View } from '../order/crew/view';
import type { Action, Of } from '../site/action';
import type { RafterId } from '../site/ids';
import { between, type Decider } from './skill';
import { expected } from './expects';
import { said } from './said';

/** Acts as they come out where the decision about them is wrong. Amounts are in inches and ours. */

type Read = Extract<PlannedAction, { type: 'read' }>;

/** Who misreads says what was expected there: the figure of the plan to the tool's division, nothing out of true, a clean board. */
export const misread = (view: View, act: Read): Action | undefined => {
  const as = said(view, act);
  if (as?.type !== 'read') return undefined;
  const wanted = expected(view, act);
  const { division } = tools[act.tool];
  return { ...as, said: typeof wanted === 'number' ? Math.round(wanted / division) * division + 0 : wanted };
};

/** The other call: a sound board is refused, any other is taken. */
const misjudged = ({ subject, call }: Of<'judge'>): Of<'judge'> => ({
  type: 'judge',
  subject,
  call: call === 'sound' ? 'swap' : 'sound',
});

/** A rafter pushed off its mark. */
export const pushedOff = (member: RafterId, how: number): Action => ({
  type: 'shift',
  member,
  at: 'heel',
  by: signed(how, [3, 8]) / 16,
});

/**
 * What can be set or cut less true; undefined for what cannot: a block is cut short, marks are stepped off one from the next,
 * rafters are set to their mark and not to the line.
 */
export const misfit = (act: Action): Action | undefined => {
  switch (act.type) {
    case 'mark':
      return { ...act, datum: 'last' };
    case 'place':
      return act.at === 'line' ? { ...act, at: 'mark' } : undefined;
    case 'trim':
      return act.member.startsWith('block.') ? { ...act, by: act.by + cutShort } : undefined;
    default:
      return undefined;
  }
};

/** How much shorter than it should be a block ends up that is cut without care, inches. */
const cutShort = 3 / 16;

/** As many from least to most, one way or the other. */
const signed = (how: number, [least, most]: readonly [number, number]): number => {
  const twice = how * 2;
  return twice < 1 ? -between(twice, [least, most]) : between(twice - 1, [least, most]);
};

/** One decision for each thing that is set, cut or moved, however often: what kind of act, which thing, where. */
export const fitName = (act: Action | PlannedAction): string => {
  const what = 'member' in act ? act.member : 'on' in act ? act.on : 'wall' in act ? act.wall : '';
  const at = 'end' in act ? act.end : 'at' in act ? act.at : '';
  return `${act.type} ${what} ${at}`;
};

/**
 * What is called of a board is a decision; plates and the ridge are called what was read at them. Who takes or refuses
 * everything needs no reading for it.
 */
export const judged = (
  act: Of<'judge'>,
  decider: Decider,
  everything: 'sound' | 'swap' | undefined,
): Action => {
  const { subject } = act;
  const board = /^board\.\d+$/.test(subject);
  if (everything)
    return { type: 'judge', subject, call: everything === 'swap' && !board ? 'mend' : everything };
  return !board || decider.right('judge', subject) ? act : misjudged(act);
};
