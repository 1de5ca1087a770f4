import type { Action, Of } from './action';
import type { Step } from './attempt';

/** A run of single acts the crew has seen, told again at later stations. */

/**
 * The acts of `like` (first and last step, counted from 0) repeated station by station until the pattern's last station
 * would pass `to`. Undefined when the pattern names no station, or there is nothing to repeat.
 */
export const expand = (
  steps: readonly Step[],
  { like, to }: Of<'carryOn'>,
): readonly Action[] | undefined => {
  const [first, last] = like;
  const pattern = steps.slice(first, last + 1).map(({ action }) => action);
  if (first < 0 || pattern.length === 0 || pattern.some(cannotRepeat)) return undefined;
  const span = stationsIn(pattern);
  if (!span || to <= span.high) return undefined;
  const stride = span.high - span.low + 1;
  const rounds = Math.floor((to - span.high) / stride);
  if (rounds < 1) return undefined;
  return Array.from({ length: rounds }, (_, i) =>
    pattern.map((action) => moved(action, (i + 1) * stride)),
  ).flat();
};

const cannotRepeat = ({ type }: Action): boolean =>
  ['carryOn', 'undo', 'handOver', 'letGo', 'hookOn', 'judge', 'swap', 'trim', 'read', 'draw'].includes(type);

const stationsIn = (
  pattern: readonly Action[],
): { readonly low: number; readonly high: number } | undefined => {
  const numbers = pattern.flatMap(stationsOfAction);
  return numbers.length === 0 ? undefined : { low: Math.min(...numbers), high: Math.max(...numbers) };
};

/** Which stations one act works at: a block belongs to the rafter it is nailed to first. */
const stationsOfAction = (action: Action): readonly number[] => {
  const named = 'member' in action ? action.member : 'joint' in action ? action.joint : undefined;
  if (action.type === 'setTie') return [action.station];
  const found = named === undefined ? null : numbered.exec(named);
  return found ? [Number(found[2])] : [];
};

const numbered = /((?:rafter|block)\.(?:street|yard)\.|(?:joist|rafterTie|crossTie|collar|strap)\.)(\d+)/;

/** The same act so many stations on, with the next board from the pile. */
const moved = (action: Action, by: number): Action => {
  if (action.type === 'setTie') return { ...action, station: action.station + by };
  const on = <T extends string>(id: T): T =>
    id.replace(numbered, (_, kind: string, n: string) => `${kind}${Number(n) + by}`) as T;
  if (action.type === 'place') {
    const { board: _board, ...rest } = action;
    return { ...rest, member: on(rest.member) };
  }
  if ('joint' in action) return { ...action, joint: on(action.joint) };
  return 'member' in action ? ({ ...action, member: on(action.member) } as Action) : action;
};
