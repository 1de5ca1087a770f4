import { partsOfJoint, type JointId, type MemberId } from '../../core/site/ids';
import type { Attempt } from '../../core/site/attempt';
import type { Spot } from '../offers/offer';
import type { Messages } from './messages';
import { readingText, type Units } from './numbers';
import { pick } from './spotNames';

/** What is seen at a place, in a few words and without a verdict: nails, the last reading said, what was called. */
export const seenAt = (
  words: Messages,
  attempt: Attempt,
  { spot, units }: { readonly spot: Spot; readonly units: Units },
): string => {
  const { site } = attempt;
  if (spot.reading) return readAt(words, attempt, { reading: spot.reading, units });
  if (spot.id.startsWith('judge@')) return calledAs(words, site.judged[spot.member]?.call);
  if (spot.id.includes(':')) return nailsAt(words, attempt, spot.id as JointId);
  const [head = '', second = ''] = spot.id.split('.');
  if (head === 'agree') {
    const value = (site.agreed as Readonly<Record<string, string | undefined>>)[second];
    return value === undefined ? '' : pick(words.trade.method, second, value);
  }
  if (head === 'stand') return pick(words.trade.spot, site.people[second as 'lead']);
  return '';
};

/** Said so only when asked for one place: what stands and what it hangs on. */
export const seenOn = (words: Messages, attempt: Attempt, spot: Spot): string => {
  const { state } = words.ui;
  const { site } = attempt;
  const up =
    site.members[spot.member as MemberId] !== undefined || (spot.member.startsWith('ridge') && site.ridge);
  if (spot.id.includes(':')) return nailsAt(words, attempt, spot.id as JointId) || state.bare;
  if (!up) return /^(rafter|block|collar|strap|joist|post|brace|ridge)/.test(spot.member) ? state.open : '';
  const joints = Object.entries(site.joints).filter(([id]) => partsOfJoint(id).member === spot.member);
  const tacks = joints.reduce((sum, [, so]) => sum + (so?.tacks ?? 0), 0);
  const nails = joints.reduce((sum, [, so]) => sum + (so?.nails ?? 0), 0);
  if (tacks + nails === 0) return state.up;
  return [tacks > 0 ? state.tacks(tacks) : '', nails > 0 ? state.nails(nails) : '']
    .filter(Boolean)
    .join(', ');
};

const readAt = (
  words: Messages,
  { site }: Attempt,
  {
    reading: { tool, at, from },
    units,
  }: { readonly reading: NonNullable<Spot['reading']>; readonly units: Units },
): string => {
  const judged = site.judged[at]?.call;
  if (judged) return calledAs(words, judged);
  const last = site.readings
    .filter((r) => r.tool === tool && r.at === at && (from === undefined || r.from === from))
    .at(-1);
  if (last === undefined) return '';
  if (typeof last.said === 'string') return pick(words.trade.seen, last.said);
  const said = readingText(words, last.said, units);
  const { held } = words.trade;
  return last.from !== undefined && last.from in held
    ? `${said} ${held[last.from as keyof typeof held]}`
    : said;
};

const calledAs = (words: Messages, call: string | undefined): string =>
  call === undefined ? '' : (pick(words.trade.call, call).split(':')[0] ?? '');

const nailsAt = (words: Messages, { site }: Attempt, joint: JointId): string => {
  const so = site.joints[joint];
  if (!so) return '';
  return so.tacks > 0 ? words.ui.state.tacks(so.tacks) : so.nails > 0 ? words.ui.state.nails(so.nails) : '';
};
