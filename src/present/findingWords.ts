import type { FaultId } from '../core/faults/fault';
import { faultRow } from '../core/faults/rows';
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
  if (kind === 'eye' && code === 'falseAlarm')
    return { title: words.ui.debrief.falseAlarm, why: memberName(words, at) };
  if (kind === 'eye')
    return {
      title: words.ui.debrief.faultMissed(pick(words.trade.fault, code)),
      why: [`${memberName(words, at)}.`, ...faultTold(words, code as FaultId)].join(' '),
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

/** How a fault shows in the work, and what would have found it. */
const faultTold = (words: Messages, id: FaultId): readonly string[] => {
  const row = faultRow(id);
  if (!row) return [];
  const { trade, ui } = words;
  return [
    ...(row.shows.length === 0
      ? []
      : [
          ui.debrief.showsAs(
            oneOf(
              words,
              row.shows.map((sign) => trade.symptom[sign]),
            ),
          ),
        ]),
    ui.debrief.foundBy(
      oneOf(
        words,
        row.finds.map((tool) => trade.finder[tool]),
      ),
    ),
  ];
};

/** "the square or the rule". */
const oneOf = ({ ui }: Messages, names: readonly string[]): string =>
  names.length < 2
    ? names.join('')
    : `${names.slice(0, -1).join(', ')} ${ui.number.or} ${names[names.length - 1] ?? ''}`;

const placeName = (words: Messages, at: string): string =>
  at.includes(':') ? jointName(words, at) : memberName(words, at);
