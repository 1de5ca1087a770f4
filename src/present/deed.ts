import type { PlannedAction } from '../core/order/crew/view';
import type { Step } from '../core/site/attempt';
import { captionFor } from './caption';
import { stepText } from './stepText';
import { jointName, memberName } from './words/names';
import type { Messages } from './words/messages';
import type { Units } from './words/numbers';

/** What was done at a step, as it is told afterwards: it names the thing. */
export const deedText = (words: Messages, step: Step, units: Units): string => {
  const { action, outcome } = step;
  const { debrief } = words.ui;
  if (!outcome.ok) return captionFor(words, step, units).text;
  // What came of it is told by what stands then; here it is the deed itself.
  const plain = captionFor(words, { action, outcome: { ok: true, events: [] } }, units);
  switch (action.type) {
    case 'takeOut':
      return debrief.out(memberName(words, action.member));
    case 'draw':
      return debrief.drawn(jointName(words, action.joint));
    case 'swap':
      return debrief.swapped(memberName(words, action.member));
    case 'setPost':
      return words.ui.caption.placed(memberName(words, `post.${action.at}`));
    case 'letGo':
      return debrief.letGo;
    case 'signal':
    case 'carryOn':
    case 'undo':
      return plain.text;
    default:
      return told.has(action.type) ? plain.text : logged(words, action as PlannedAction);
  }
};

/** What the line under the drawing already tells with its name. */
const told = new Set<string>([
  'read',
  'tack',
  'nailOff',
  'place',
  'judge',
  'agree',
  'makeReady',
  'setTie',
  'handOver',
]);

/** As a crew would write it down: the thing, and what was done to it. */
const logged = (words: Messages, action: PlannedAction): string => {
  const { thing, does } = stepText(words, action);
  return `${thing}: ${does.charAt(0).toLowerCase()}${does.slice(1)}.`;
};
