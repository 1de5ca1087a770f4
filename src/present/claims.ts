import type { Proof, ProofLine } from '../core/score/proof';
import type { Messages } from './words/messages';

/** What the score claims of itself, and the figures that speak for or against it. */
export type ClaimId = keyof Messages['proof']['claims'];
export type Claim = {
  readonly id: ClaimId;
  /** On the jobs proved in full, and on the others, with few runs each. */
  readonly inFull: readonly ProofLine[];
  readonly others: readonly ProofLine[];
};

/** How the targets of each claim begin. */
const starts: Readonly<Record<ClaimId, readonly string[]>> = {
  good: ['expert: '],
  anyOrder: ['accepted orders: '],
  luck: ['random complete orders: ', 'random: ', 'idle: '],
  apart: ['AUC: '],
  skill: ['Spearman: '],
  again: ['ICC'],
  weakest: ['weakness named: '],
  mended: ['a decision put right: '],
};

export const claimsOf = (proof: Pick<Proof, 'lines' | 'runs'>): readonly Claim[] => {
  const inFull = fullJobs(proof);
  return (Object.keys(starts) as ClaimId[]).map((id) => {
    const own = proof.lines.filter(({ target }) => starts[id].some((start) => target.startsWith(start)));
    return {
      id,
      inFull: own.filter(({ level }) => inFull.has(level)),
      others: own.filter(({ level }) => !inFull.has(level)),
    };
  });
};

/** Jobs that the careful hand did as often as the proof was asked for, and several jobs taken together. */
const fullJobs = ({ lines, runs }: Pick<Proof, 'lines' | 'runs'>): ReadonlySet<string> =>
  new Set(
    lines
      .filter(({ target, level, n }) => level.includes(', ') || (target.startsWith('expert: ') && n >= runs))
      .map(({ level }) => level),
  );

/** A target in the words of the reader. */
export const targetName = ({ proof }: Messages, target: string): string => {
  const against = /^AUC: competent against (.+)$/.exec(target)?.[1];
  if (against !== undefined) return proof.against(handName(proof, against));
  const [, weak, runs] = /^weakness named: (.+), (one run|mean of four)$/.exec(target) ?? [];
  if (weak !== undefined) return proof.named(handName(proof, weak), runs === 'one run' ? 1 : 4);
  return proof.targets[target] ?? target;
};

const handName = ({ hands }: Messages['proof'], hand: string): string => hands[hand] ?? hand;
