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
export const openItems = (standing: Standing): readonly OpenItem[] => {
  const { level, site } = standing;
  const required = requiredFor(level, site);
  const missing = required.members
    .filter((id) => !site.members[id])
    .map((at) => ({ what: 'missing' as const, at }));
  const loose = stayingPosts(level)
    .filter((id) => site.members[id] && site.members[id].how !== 'both')
    .map((at) => ({ what: 'loose' as const, at }));
  const nails = required.joints
    .filter((joint) => !finished(site, joint))
    .map((at) => ({ what: (site.joints[at]?.tacks ?? 0) > 0 ? ('tacks' as const) : ('nails' as const), at }));
  const tails = required.tails
    .filter((id) => !tailCut(site, id))
    .map((at) => ({ what: 'tail' as const, at }));
  const split = splitMembers(standing).map((at) => ({ what: 'split' as const, at }));
  return [...missing, ...loose, ...nails, ...tails, ...split];
};

const weak = (fault: FaultId | undefined): boolean => fault !== undefined && faultRow(fault)?.weak === true;

/** Members that nails split: by drawn ones, or put up with a board that was split or has its knot at the notch. */
export const splitMembers = (standing: Standing): readonly string[] => {
  const { site } = standing;
  const placed = Object.entries(site.members) as [string, Placed][];
  const up = placed.filter(
    ([id, { board }]) => id.startsWith('rafter.') && weak(boardTruth(standing, board ?? '').fault),
  );
  return [...new Set([...up.map(([id]) => id), ...site.splits])];
};
