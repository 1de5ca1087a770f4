import { promptsOf } from '../core/order/judged';
import type { Action } from '../core/site/action';
import type { Attempt, Decision } from '../core/site/attempt';
import { heldName, jointName, memberName } from './words/names';
import { readingText, type Units } from './words/numbers';
import { pick } from './words/spotNames';
import { soundsFor, type Sound } from './sounds';
import { stepText } from './stepText';
import type { Messages } from './words/messages';

/** What is said after an act: who speaks, what, and whether somebody had to be stopped. */
export type Caption = {
  readonly who: string;
  readonly text: string;
  readonly tone: 'plain' | 'no' | 'stop';
  /** What is heard with it, whether sound is on or not. */
  readonly heard?: string;
};

type Done = { readonly action: Action; readonly outcome: Decision };

/** The words of what is heard of an act, each once; undefined for silence. */
const heardText = (words: Messages, sounds: readonly Sound[]): string | undefined =>
  sounds.length === 0 ? undefined : [...new Set(sounds.map(({ name }) => words.heard[name]))].join(', ');

/** What is said of an act that was done just now, with what is heard of it. */
export const freshCaption = (words: Messages, done: Done, units: Units): Caption => {
  const heard = heardText(words, soundsFor(done.action, done.outcome));
  const said = captionFor(words, done, units);
  return heard === undefined ? said : { ...said, heard };
};

export const captionFor = (words: Messages, { action, outcome }: Done, units: Units): Caption => {
  if (!outcome.ok && outcome.stop)
    return { who: words.ui.caption.lead, text: pick(words.dangers, outcome.why), tone: 'stop' };
  if (!outcome.ok) return { who: words.ui.caption.crew, text: pick(words.refusals, outcome.why), tone: 'no' };
  const stopped = outcome.events.find((event) => event.type === 'stopped');
  if (stopped) return { who: words.ui.caption.lead, text: pick(words.dangers, stopped.danger), tone: 'stop' };
  const fall = outcome.events.find((event) => event.type === 'cameDown');
  if (fall) return fellCaption(words, fall.why);
  if (outcome.events.some((event) => event.type === 'slipped'))
    return { who: words.ui.caption.crew, text: words.ui.caption.slipped, tone: 'no' };
  return { who: words.ui.caption.you, text: doneText(words, action, units), tone: 'plain' };
};

/** What the lead says of work that came too early, at the step at which it is said. */
export const promptCaption = (words: Messages, attempt: Attempt): Caption | undefined => {
  const said = promptsOf(attempt).at(-1);
  if (said?.prompted !== attempt.steps.length - 1) return undefined;
  const { early, lead } = words.ui.caption;
  const rule = words.rules[said.rule];
  return { who: lead, text: `${early(rule?.name ?? said.rule)} ${rule?.why ?? ''}`, tone: 'plain' };
};

const fellCaption = ({ ui }: Messages, why: string): Caption => ({
  who: ui.caption.crew,
  text: `${ui.site.down} ${pick(ui.site.fell, why)}`,
  tone: 'stop',
});

const doneText = (words: Messages, action: Action, units: Units): string => {
  const { caption } = words.ui;
  switch (action.type) {
    case 'read':
      return caption.said(
        heldName(words, action),
        typeof action.said === 'number'
          ? readingText(words, action.said, units)
          : pick(words.trade.seen, action.said),
      );
    case 'tack':
      return caption.tacked(jointName(words, action.joint));
    case 'nailOff':
      return caption.nailed(jointName(words, action.joint));
    case 'place':
      return caption.placed(memberName(words, action.member));
    case 'judge':
      return `${memberName(words, action.subject)}: ${pick(words.trade.call, action.call)}.`;
    case 'agree':
      return `${pick(words.trade.method, action.topic, 'name')}: ${pick(words.trade.method, action.topic, action.value)}.`;
    case 'makeReady':
      return `${pick(words.trade.ready, action.what)}.`;
    case 'setTie':
      return caption.placed(
        memberName(words, `${action.kind === 'cross' ? 'crossTie' : action.kind}.${action.station}`),
      );
    case 'undo':
      return caption.undone(0);
    case 'handOver':
      return words.ui.site.handed;
    default:
      return words.done[deedOf(action)](thingOf(words, action));
  }
};

/** Taken back in practice: free here, with what the work had cost the crew. */
export const undoneCaption = ({ ui: { caption } }: Messages, minutes: number): Caption => ({
  who: caption.you,
  text: caption.undone(minutes),
  tone: 'plain',
});

type Plain = Exclude<
  Action,
  {
    readonly type:
      | 'read'
      | 'tack'
      | 'nailOff'
      | 'place'
      | 'judge'
      | 'agree'
      | 'makeReady'
      | 'setTie'
      | 'undo'
      | 'handOver';
  }
>;

/** An act by what it came to: which way, with what. */
const deedOf = (action: Plain): keyof Messages['done'] => {
  switch (action.type) {
    case 'mendWall':
      return action.how === 'brace' ? 'wallBrace' : action.how;
    case 'raise':
      return action.by < 0 ? 'lower' : 'raise';
    case 'shift':
      if (action.member === 'ridge') return action.by < 0 ? 'toStreet' : 'toYard';
      return action.by < 0 ? 'toA' : 'toB';
    case 'line':
      if (action.kind !== 'string') return 'snap';
      return action.off === 0 ? 'stretchBare' : 'stretch';
    case 'takeOut':
      return /^(string|chalk|tail)/.test(action.member) ? 'takeDown' : 'takeOut';
    default:
      return action.type;
  }
};

/** What it was done to. */
const thingOf = (words: Messages, action: Plain): string => {
  switch (action.type) {
    case 'draw':
      return jointName(words, action.joint);
    case 'swap':
      return memberName(words, action.member);
    case 'signal':
    case 'carryOn':
      return '';
    default:
      return stepText(words, action).thing;
  }
};

/** The line that stands when a page opens on a run. */
export const standingCaption = (words: Messages, { steps, site, found }: Attempt, units: Units): Caption => {
  const last = steps.length > (found?.steps ?? 0) ? steps[steps.length - 1] : undefined;
  if (site.down !== undefined) return fellCaption(words, site.down);
  if (site.handedOver) return { who: words.ui.caption.crew, text: words.ui.site.handed, tone: 'plain' };
  return last
    ? captionFor(words, last, units)
    : { who: words.ui.caption.lead, text: words.ui.site.pick, tone: 'plain' };
};
