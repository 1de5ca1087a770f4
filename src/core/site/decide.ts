import { isOver } from './state';
import type { Action } from './action';
import { aftermath } from './aftermath';
import type { Decision } from './attempt';
import { refuse } from './decision';
import * as ground from './decideGround';
import * as members from './decideMember';
import * as nails from './decideNails';
import { decideSetPost } from './decidePost';
import * as ridge from './decideRidge';
import { minutesOf } from './minutes';
import { decideCutTail } from './tails';
import type { SiteEvent } from './event';
import type { Standing } from './standing';

type Single = Exclude<Action['type'], 'carryOn' | 'undo'>;
type Deciders = {
  readonly [T in Single]: (standing: Standing, action: Extract<Action, { type: T }>) => Decision;
};

const deciders: Deciders = {
  agree: ground.decideAgree,
  makeReady: ground.decideMakeReady,
  read: ground.decideRead,
  judge: ground.decideJudge,
  mark: ground.decideMark,
  mendWall: ground.decideMendWall,
  setTie: ground.decideSetTie,
  place: members.decidePlace,
  tack: nails.decideTack,
  nailOff: nails.decideNailOff,
  draw: nails.decideDraw,
  hookOn: ridge.decideHookOn,
  stand: ground.decideStand,
  signal: ridge.decideSignal,
  setPost: decideSetPost,
  raise: ridge.decideRaise,
  shift: ridge.decideShift,
  brace: ground.decideBrace,
  letGo: ridge.decideLetGo,
  line: ground.decideLine,
  trim: members.decideTrim,
  cutTail: decideCutTail,
  swap: members.decideSwap,
  takeOut: members.decideTakeOut,
  handOver: ground.decideHandOver,
};

/**
 * Whether one act can be done here and now, and what it brings about. Only what is physically impossible is refused and
 * only what endangers somebody is stopped; an act out of order is neither. Never throws, never changes anything.
 */
export const decide = (standing: Standing, action: Action): Decision => {
  if (isOver(standing.site)) return refuse('over');
  if (action.type === 'carryOn' || action.type === 'undo') return refuse('notASingleAct');
  const decided = (deciders[action.type] as (standing: Standing, action: Action) => Decision)(
    standing,
    action,
  );
  if (!decided.ok) return decided;
  const spent: SiteEvent = { type: 'spent', minutes: minutesOf(action) };
  const done = [...decided.events, spent];
  return { ok: true, events: [...done, ...aftermath(standing, done)] };
};
