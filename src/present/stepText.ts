import type { PlannedAction } from '../core/order/crew/view';
import { partsOfJoint } from '../core/site/ids';
import { heldName, jointName, memberName } from './words/names';
import { pick } from './words/spotNames';
import type { Messages } from './words/messages';

/** A step before it is done: the thing it is about, and what is done to it. */
export type StepText = { readonly thing: string; readonly does: string };

type Of<T extends PlannedAction['type']> = Extract<PlannedAction, { readonly type: T }>;

/** Id of the member, line or wall a step is about; `site` where it is about none. */
export const stepMember = (step: PlannedAction): string => {
  switch (step.type) {
    case 'read':
      return memberRead(step.at);
    case 'tack':
    case 'nailOff':
      return partsOfJoint(step.joint).member;
    case 'place':
    case 'cutTail':
    case 'trim':
    case 'shift':
    case 'takeOut':
      return step.member;
    case 'judge':
      return step.subject;
    case 'mark':
      return step.on;
    case 'mendWall':
      return step.wall;
    default:
      return memberMade(step);
  }
};

/** What a tool is held to. */
const memberRead = (at: string): string => {
  if (at.includes(':')) return partsOfJoint(at).member;
  const [what = '', which = '', rest = ''] = at.split('.');
  if (what === 'layout' || what === 'plane') return `rafter.${which}.${rest}`;
  if (what === 'plate' || what === 'board') return `${what}.${which}`;
  return what === 'ridge' ? what : 'site';
};

const memberMade = (step: PlannedAction): string => {
  switch (step.type) {
    case 'setTie':
      return `${step.kind === 'cross' ? 'crossTie' : step.kind}.${step.station}`;
    case 'setPost':
      return `post.${step.at}`;
    case 'brace':
      return braceName(step);
    case 'line':
      return lineName(step);
    case 'raise':
    case 'hookOn':
    case 'letGo':
      return 'ridge';
    default:
      return 'site';
  }
};

export const stepText = (words: Messages, step: PlannedAction): StepText => {
  const { act, watch } = words.ui;
  switch (step.type) {
    case 'read':
      return { thing: heldName(words, step), does: watch.reads };
    case 'tack':
      return { thing: jointName(words, step.joint), does: act.tack };
    case 'nailOff':
      return { thing: jointName(words, step.joint), does: act.nail };
    case 'agree':
      return {
        thing: pick(words.trade.method, step.topic, 'name'),
        does: pick(words.trade.method, step.topic, step.value),
      };
    case 'makeReady':
      return { thing: pick(words.trade.ready, step.what), does: act.makeReady };
    case 'stand':
      return { thing: pick(words.trade.person, step.who), does: act.stand };
    default:
      return { thing: memberName(words, stepMember(step)), does: doesText(words, step) };
  }
};

/** What is done to a member, a line or a wall. */
const doesText = (words: Messages, step: PlannedAction): string => {
  const { act, site } = words.ui;
  switch (step.type) {
    case 'place':
      return pick(act.place, step.at);
    case 'judge':
      return `${act.judge} ${pick(words.trade.call, step.call)}`;
    case 'mendWall':
      return pick(act, step.how);
    case 'line':
      return step.kind === 'string' ? act.stretch : act.snap;
    case 'trim':
      return pick(act.trim, step.cut);
    case 'raise':
      return step.by < 0 ? act.lower : act.raise;
    case 'shift':
      return shiftText(words, step);
    default:
      return plainly(words, step.type) ?? site.done;
  }
};

const plainly = ({ ui: { act } }: Messages, type: PlannedAction['type']): string | undefined =>
  ({
    setTie: act.setTie,
    setPost: act.post,
    mark: act.mark,
    brace: act.brace,
    cutTail: act.cutTail,
    takeOut: act.takeOut,
    hookOn: act.hook,
    letGo: act.letGo,
    handOver: act.handOver,
  })[type as string];

const braceName = ({ kind, from }: Of<'brace'>): string =>
  kind === 'along' ? 'brace.along.1' : `brace.${kind}.${from}`;

/** A line is named by the side its first rafter is on. */
const lineName = ({ kind, from }: Of<'line'>): string =>
  `${kind}.${from.includes('yard') ? 'yard' : 'street'}`;

const shiftText = ({ ui: { act } }: Messages, { member, by }: Of<'shift'>): string => {
  if (member === 'ridge') return by < 0 ? act.toStreet : act.toYard;
  return by < 0 ? act.toA : act.toB;
};
