import type { Finding } from '../core/score/score';
import { jointName, memberName } from './words/names';
import type { Messages } from './words/messages';
import { lengthText, type Units } from './words/numbers';
import { pick } from './words/spotNames';

/** A finding told: what it was, why it matters, what it came to. */
export type ToldFinding = { readonly title: string; readonly why: string };

export const tellFinding = (words: Messages, finding: Finding, units: Units): ToldFinding => {
  const { code, kind, at = '', numbers, costOnly } = finding;
  const rule = words.rules[code];
  if (code === 'cameDown') return { title: words.ui.site.down, why: pick(words.ui.site.fell, at) };
  if (kind === 'safety') return { title: rule?.name ?? code, why: pick(words.dangers, at) };
  if (kind === 'fit')
    return {
      title: pick(words.trade.feature, code.replace('fit.', '')),
      why: `${placeName(words, at)}. ${words.ui.debrief.off(lengthText(Math.abs(numbers['off'] ?? 0), units), lengthText(numbers['allowed'] ?? 0, units))}`,
    };
  if (kind === 'eye')
    return {
      title:
        code === 'falseAlarm'
          ? words.ui.debrief.falseAlarm
          : words.ui.debrief.faultMissed(pick(words.trade.fault, code)),
      why: memberName(words, at),
    };
  if (kind === 'check')
    return {
      title: rule?.name ?? code,
      why: `${pick(words.ui.debrief.missed, at.split(':')[0] ?? '')} ${rule?.why ?? ''}`,
    };
  return {
    title: rule?.name ?? code,
    why: `${rule?.why ?? ''}${costOnly ? ` ${words.ui.debrief.costOnly}` : ''}`,
  };
};

const placeName = (words: Messages, at: string): string =>
  at.includes(':') ? jointName(words, at) : memberName(words, at);
