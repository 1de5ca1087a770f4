import type { Messages } from './messages';
import type { Spot } from '../offers/offer';
import { jointName, memberName, readingName } from './names';

/** What a place in the work list is called. */
export const spotName = (words: Messages, spot: Spot): string => {
  const { id, member, reading } = spot;
  const { trade, ui } = words;
  if (reading) return readingName(words, reading);
  if (id.includes(':')) return jointName(words, id);
  const [head = '', second = '', third = ''] = id.split('.');
  if (head === 'agree') return pick(trade.method, second, 'name');
  if (head === 'ready') return pick(trade.ready, second);
  if (head === 'stand') return pick(trade.person, second);
  if (head === 'machine') return ui.act.hook;
  if (id === 'carryOn') return ui.act.carryOn;
  if (id === 'handOver') return ui.act.handOver;
  if (id === 'ridge.mid') return `${trade.member.ridge}, ${trade.place.mid}`;
  if (/^ridge\.(A|B|both)$/.test(id)) return `${trade.member.ridge}, ${pick(trade.end, second)}`;
  if (head === 'plate') return `${memberName(words, id)}, ${third === 'mid' ? trade.place.mid : third}`;
  return memberName(words, member);
};

/** Follows a path into the catalogue; the last word of the path where it leads nowhere. */
export const pick = (from: unknown, ...path: readonly string[]): string => {
  const found = path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>)[key] : undefined,
    from,
  );
  return typeof found === 'string' ? found : (path[path.length - 1] ?? '');
};

/** The words of an offer or an option, from its path. */
export const labelText = (words: Messages, [head = '', ...rest]: readonly string[]): string => {
  if (head === 'act') return pick(words.ui.act, ...rest);
  if (head === 'board') return memberName(words, rest[0] ?? '');
  if (head === 'number') return rest[0] ?? '';
  return pick(words.trade, head, ...rest);
};
