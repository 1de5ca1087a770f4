import type { FaultId } from '../faults/fault';
import { faultRow } from '../faults/rows';
import { boardTruth } from '../level/boardTruth';
import type { Placed } from './state';
import type { Standing } from './standing';
import { stayingPosts } from './planPosts';
import { finished, requiredFor } from './required';
import { tailCut } from './tailLong';

/** One thing somebody walking round with the punch list would see: missing, a post not fixed, short of nails, or split. */
export type OpenItem = {
  readonly what: 'missing' | 'loose' | 'nails' | 'split' | 'tacks' | 'tail';
  readonly at: string;
};

/** Everything still open, in walking order. Only what shows without a tool. */
export const openItems = (standing: Standing): readonly OpenItem[] => [...walked(standing)];

/** Whether somebody walking round finds nothing open. */
export const nothingOpen = (standing: Standing): boolean => walked(standing).next().done === true;

function* walked(standing: Standing): Generator<OpenItem> {
  const { level, site } = standing;
  const { members, joints, tails } = requiredFor(level, site);
  for (const at of members) if (!site.members[at]) yield { what: 'missing', at };
  for (const at of stayingPosts(level))
    if (site.members[at] && site.members[at].how !== 'both') yield { what: 'loose', at };
  for (const at of joints)
    if (!finished(site, at)) yield { what: (site.joints[at]?.tacks ?? 0) > 0 ? 'tacks' : 'nails', at };
  for (const at of tails) if (!tailCut(site, at)) yield { what: 'tail', at };
  for (const at of splitMembers(standing)) yield { what: 'split', at };
}

const weak = (fault: FaultId | undefined): boolean => fault !== undefined && faultRow(fault)?.weak === true;

/** Members that nails split: by drawn ones, or put up with a board that was split or has its knot at the notch. */
export const splitMembers = (standing: Standing): readonly string[] => {
  const { level, seed, site } = standing;
  const last = splitIn.get(site.members);
  if (last?.level === level && last.seed === seed && last.splits === site.splits) return last.found;
  const found = splitAnew(standing);
  splitIn.set(site.members, { level, seed, splits: site.splits, found });
  return found;
};
type Split = Pick<Standing, 'level' | 'seed'> & Pick<Standing['site'], 'splits'>;
const splitIn = new WeakMap<Standing['site']['members'], Split & { readonly found: readonly string[] }>();

const splitAnew = (standing: Standing): readonly string[] => {
  const { site } = standing;
  const placed = Object.entries(site.members) as [string, Placed][];
  const up = placed.filter(
    ([id, { board }]) => id.startsWith('rafter.') && weak(boardTruth(standing, board ?? '').fault),
  );
  return [...new Set([...up.map(([id]) => id), ...site.splits])];
};
