import type { PlannedAction } from '../core/order/crew/view';
import { heldName, jointName, memberName } from './words/names';
import { pick } from './words/spotNames';
import type { Messages } from './words/messages';

/** A step before it is done: the thing it is about, and what is done to it. */
export type StepText = { readonly thing: string; readonly does: string };

export const stepText = (words: Messages, step: PlannedAction): StepText => {
  const { act, watch } = words.ui;
  switch (step.type) {
    case 'read':
      return { thing: heldName(words, step), does: watch.reads };
    case 'tack':
      return { thing: jointName(words, step.joint), does: act.tack };
    case 'nailOff':
      return { thing: jointName(words, step.joint), does: act.nail };
    case 'place':
      return { thing: memberName(words, step.member), does: pick(act.place, step.at) };
    case 'judge':
      return {
        thing: memberName(words, step.subject),
        does: `${act.judge} ${pick(words.trade.call, step.call)}`,
      };
    case 'agree':
      return {
        thing: pick(words.trade.method, step.topic, 'name'),
        does: pick(words.trade.method, step.topic, step.value),
      };
    case 'makeReady':
      return { thing: pick(words.trade.ready, step.what), does: act.makeReady };
    case 'setTie':
      return {
        thing: memberName(words, `${step.kind === 'cross' ? 'crossTie' : step.kind}.${step.station}`),
        does: act.setTie,
      };
    case 'setPost':
      return { thing: memberName(words, `post.${step.at}`), does: act.post };
    case 'mark':
      return { thing: memberName(words, step.on), does: act.mark };
    case 'mendWall':
      return { thing: memberName(words, step.wall), does: pick(act, step.how) };
    case 'brace':
      return { thing: memberName(words, braceName(step)), does: act.brace };
    case 'line':
      return {
        thing: memberName(words, lineName(step)),
        does: step.kind === 'string' ? act.stretch : act.snap,
      };
    case 'cutTail':
      return { thing: memberName(words, step.member), does: act.cutTail };
    case 'trim':
      return { thing: memberName(words, step.member), does: pick(act.trim, step.cut) };
    default:
      return handled(words, step);
  }
};

/** What is done to things that stand, and who goes where. */
const handled = (words: Messages, step: PlannedAction): StepText => {
  const { act, site } = words.ui;
  switch (step.type) {
    case 'raise':
      return { thing: words.trade.member.ridge, does: step.by < 0 ? act.lower : act.raise };
    case 'shift':
      return { thing: memberName(words, step.member), does: shiftText(words, step) };
    case 'takeOut':
      return { thing: memberName(words, step.member), does: act.takeOut };
    case 'hookOn':
      return { thing: words.trade.member.ridge, does: act.hook };
    case 'letGo':
      return { thing: words.trade.member.ridge, does: act.letGo };
    case 'stand':
      return { thing: pick(words.trade.person, step.who), does: act.stand };
    case 'handOver':
      return { thing: words.trade.member.site, does: act.handOver };
    default:
      return { thing: words.trade.member.site, does: site.done };
  }
};

type Of<T extends PlannedAction['type']> = Extract<PlannedAction, { readonly type: T }>;

const braceName = ({ kind, from }: Of<'brace'>): string =>
  kind === 'along' ? 'brace.along.1' : `brace.${kind}.${from}`;

/** A line is named by the side its first rafter is on. */
const lineName = ({ kind, from }: Of<'line'>): string =>
  `${kind}.${from.includes('yard') ? 'yard' : 'street'}`;

const shiftText = ({ ui: { act } }: Messages, { member, by }: Of<'shift'>): string => {
  if (member === 'ridge') return by < 0 ? act.toStreet : act.toYard;
  return by < 0 ? act.toA : act.toB;
};
