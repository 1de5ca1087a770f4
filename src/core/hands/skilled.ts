import { isOver } from '../site/state';
import type { Methods } from '../level/method';
import { jobsOf, possible, type Standing } from '../order/crew/planner';
import { boardRank } from '../order/crew/boards';
import { byEye } from '../order/crew/endProofs';
import type { Task } from '../order/crew/task';
import { endRafters, setUp } from '../order/crew/pairs';
import { held, stands, viewOf, type PlannedAction, type View } from '../order/crew/view';
import { sidesOf } from '../level/layout';
import type { Action } from '../site/action';
import type { Attempt } from '../site/attempt';
import { rafterId, type RafterId } from '../site/ids';
import { requiredFor } from '../site/required';
import { assume, believing, keyOf, type Assumed } from './assumed';
import type { Character } from './characters';
import { daringOf, dared, withoutCare, wouldDare, type Daring } from './daring';
import type { Dice } from './dice';
import { expected, toldBy } from './expects';
import type { Player } from './hand';
import { fitName, judged, misfit, misread, pushedOff } from './misdone';
import { latersOf, takenUp } from './putOff';
import { said } from './said';
import { deciderOf, type Decider } from './skill';
import { wayOf } from './ways';

/** A learner who knows the plan of the work and gets each decision right by its own chance. */

type Start = {
  readonly character: Character;
  readonly dice: Dice;
  readonly wanted?: Partial<Methods> | undefined;
  /** The name of one decision that is right whatever the dice say. */
  readonly righted?: string | undefined;
};

/**
 * What a player carries along: its decisions, what it took for read, how often it did each thing and moved each thing, what
 * it pushed, which rules it knows it broke.
 */
type Mind = {
  readonly character: Character;
  readonly decider: Decider;
  readonly assumed: Assumed;
  readonly done: Map<string, number>;
  readonly moved: Map<string, number>;
  readonly pushed: Set<RafterId>;
  readonly broken: Set<string>;
};

export const skilled = ({ character, dice, wanted, righted }: Start): { play: Player; decider: Decider } => {
  const decider = deciderOf(dice, character.skill, righted);
  const mind: Mind = {
    character,
    decider,
    assumed: new Map(),
    done: new Map(),
    moved: new Map(),
    pushed: new Set(),
    broken: new Set(),
  };
  let way: Methods | undefined;
  const play: Player = (attempt) => {
    way ??= wayOf(attempt.level, dice, wanted);
    if (isOver(attempt.site)) return undefined;
    if (leaves(attempt, character)) return { type: 'handOver' };
    const act = nextAct(attempt, way, mind) ?? { type: 'handOver' };
    countUp(mind.done, JSON.stringify(act));
    if (isMove(act)) countUp(mind.moved, fitName(act));
    return act;
  };
  return { play, decider };
};

const leaves = (attempt: Attempt, { leavesAt }: Character): boolean => {
  if (leavesAt === undefined) return false;
  const { members, joints, tails } = requiredFor(attempt.level, attempt.site);
  const { seen } = viewOf(attempt);
  const open = seen.open.filter(({ what }) => what !== 'split').length;
  return 1 - open / (members.length + joints.length + tails.length) >= leavesAt;
};

/** Readings that one act may pass over before it; more than any job asks for. */
const mostPassedOver = 300;

/** Passes over the readings it does not take, and moves it has given up, until it comes to an act it does. */
const nextAct = (attempt: Attempt, way: Methods, mind: Mind): Action | undefined => {
  for (let passed = 0; passed < mostPassedOver; passed++) {
    const seen = viewOf(attempt, { wanted: way });
    const view = believing(seen, mind.assumed);
    const dares = daringOf(view, mind.decider);
    const step = attempt.steps.length - 0.5;
    if (takenAsDone(view, mind, step)) continue;
    const act = chosen(view, mind, dares);
    if (act === undefined) return undefined;
    if (act.type !== 'read' || taken(act, mind)) {
      const does = done(view, act, { mind, dares });
      for (const later of does ? latersOf(view, does) : []) mind.broken.add(later);
      return does;
    }
    assume(mind.assumed, { read: act, value: expected(view, act), step });
  }
  return undefined;
};

/** A thing moved often enough is taken to be where it should: its readings are passed over from here on. */
const takenAsDone = (view: View, mind: Mind, step: number): boolean => {
  const given = jobsOf(view)
    .flatMap(({ left }) => left)
    .filter((act) => isMove(act) && hopeless(act, mind))
    .flatMap((act) => toldBy(view, act))
    .filter(({ tool, at, from }) => mind.assumed.get(keyOf(tool, at, from))?.at(-1)?.step !== step);
  for (const read of given) assume(mind.assumed, { read, value: expected(view, read), step });
  return given.length > 0;
};

type Read = Extract<PlannedAction, { type: 'read' }>;

/** A board is always looked at and said to be what it looks like: what is called of it is the one decision about it. */
const isLook = ({ at }: Read): boolean => /^board\.\d+/.test(at);

const taken = (act: Read, { decider }: Mind): boolean => isLook(act) || decider.right('check', readName(act));

const readName = ({ tool, at, from }: Read): string => keyOf(tool, at, from);

const chosen = (view: View, mind: Mind, dares: Daring): PlannedAction | undefined => {
  const can = (act: PlannedAction): boolean =>
    !hopeless(act, mind) && (possible(view, act) || wouldDare(view, act, dares));
  const hanging = handHeld(view).find(can);
  if (hanging) return hanging;
  const left = (job: Standing): Standing => withoutHope(view, withoutCare(job, dares), mind);
  const stuck = new Set<Task>();
  for (;;) {
    const jobs = takenUp(view, { decider: mind.decider, broken: mind.broken, left, stuck });
    for (const { task, left: acts } of jobs) {
      const found = (task.anyOrder ? inAnyOrder(acts, mind.decider) : acts).find(can);
      if (found) return found;
    }
    // Nothing goes on: what stands open is closed by eye, and then whatever is stuck is left behind.
    const closing = stuck.size === 0 ? [...byEye(view), ...driven(jobs)].find(can) : undefined;
    if (closing || jobs.length === 0) return closing;
    for (const { task } of jobs) stuck.add(task);
  }
};

/** A block that was cut and does not drop in yet is driven. */
const driven = (jobs: readonly Standing[]): readonly PlannedAction[] =>
  jobs.flatMap(({ left }) =>
    left.flatMap((act) => (act.type === 'place' && act.at === 'drop' ? [{ ...act, at: 'drive' }] : [])),
  );

/** The same act comes to nothing more often than this only where it is hopeless. Ours. */
const patience = 4;
/** So often an end of the ridge, a wall or a heel is moved before it is left as it is. Ours. */
const enoughMoves = 4;
/** A block is cut a sixteenth at a time until it drops in; more than this and the bay is no bay. Ours. */
const enoughCuts = 16;

/** Calls on what nobody looked at are dropped, so that the rest of the job goes on. */
const withoutHope = (view: View, job: Standing, mind: Mind): Standing => ({
  ...job,
  left: job.left.filter((act) => (act.type === 'judge' ? possible(view, act) : !hopeless(act, mind))),
});

/** It came to nothing before, the thing was moved often enough, or, without care for fit, is left as it lies. */
const hopeless = (act: PlannedAction, mind: Mind): boolean => {
  if (act.type === 'trim' && act.member.startsWith('block.')) return moves(mind, act) >= enoughCuts;
  if (isMove(act) && !mind.decider.right('fit', fitName(act))) return true;
  return (
    (mind.done.get(JSON.stringify(act)) ?? 0) >= patience || (isMove(act) && moves(mind, act) >= enoughMoves)
  );
};

const isMove = ({ type }: PlannedAction | Action): boolean =>
  ['raise', 'shift', 'mendWall', 'trim'].includes(type);

const moves = ({ moved }: Mind, act: PlannedAction | Action): number => moved.get(fitName(act)) ?? 0;

const countUp = (counts: Map<string, number>, name: string): void => {
  counts.set(name, (counts.get(name) ?? 0) + 1);
};

const inAnyOrder = (acts: readonly PlannedAction[], { how }: Decider): readonly PlannedAction[] =>
  [...acts]
    .map((act) => ({ act, at: how(`turn ${JSON.stringify(act)}`) }))
    .sort((a, b) => a.at - b.at)
    .map(({ act }) => act);

/** A rafter held by hand is tacked before anything else is touched. */
const handHeld = (view: View): readonly PlannedAction[] =>
  setUp(
    view,
    sidesOf(view.seen.level)
      .flatMap((side) => view.stations.map((_, i) => rafterId(side, i + 1)))
      .filter((id) => stands(view, id) && !held(view, `ridge:${id}`)),
  );

type Doing = { readonly mind: Mind; readonly dares: Daring };

/** The act as this hand does it: read, called, set and dared as its decisions fall. */
const done = (view: View, act: PlannedAction, { mind, dares }: Doing): Action | undefined => {
  const { decider, character } = mind;
  if (act.type === 'read') {
    const name = readName(act);
    return isLook(act) || decider.right('read', name) ? said(view, act) : misread(view, act);
  }
  if (act.type === 'judge') return judged(act, decider, character.everything);
  const push = act.type === 'tack' ? pushFirst(view, act.joint.split(':')[1] as RafterId, mind) : undefined;
  return push ?? fitted(view, dared(view, withBoard(view, act, decider), dares), mind);
};

/** Of boards that are as good any one is taken, by the place it is for: one board more or less moves few others. */
const withBoard = (view: View, act: Action, { how }: Decider): Action => {
  if (act.type !== 'place' || !act.member.startsWith('rafter.') || act.board === undefined) return act;
  const best = boardRank(view, act.board);
  const alike = view.seen.boards.free.filter((board) => boardRank(view, board) === best);
  const liking = (board: string): number => how(`board ${board} ${act.member}`);
  const board = alike.reduce((most, one) => (liking(one) > liking(most) ? one : most), act.board);
  return { ...act, board };
};

/** A rafter that is not set true is pushed off its mark before its first tack; the end pairs stand flush anyway. */
const pushFirst = (view: View, id: RafterId, { decider, pushed }: Mind): Action | undefined => {
  if (!id.startsWith('rafter.') || pushed.has(id) || endRafters(view).includes(id)) return undefined;
  pushed.add(id);
  if (decider.right('fit', `place ${id}`)) return undefined;
  const off = pushedOff(id, decider.how(`place ${id}`));
  return view.seen.would(off).ok ? off : undefined;
};

const fitted = (view: View, act: Action, { decider }: Mind): Action => {
  const off = misfit(act);
  return off === undefined || decider.right('fit', fitName(act)) || !view.seen.would(off).ok ? act : off;
};
