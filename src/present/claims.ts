import type { Proof, ProofLine } from '../core/score/proof';
import type { Messages } from './words/messages';

/** What the score claims of itself, and the figures that speak for or against it. */
export type ClaimId = keyof Messages['proof']['claims'];
export type Claim = { readonly id: ClaimId; readonly lines: readonly ProofLine[] };

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

export const claimsOf = ({ lines }: Pick<Proof, 'lines'>): readonly Claim[] =>
  (Object.keys(starts) as ClaimId[]).map((id) => ({
    id,
    lines: lines.filter(({ target }) => starts[id].some((start) => target.startsWith(start))),
  }));

/** A target in the words of the reader. */
export const targetName = ({ proof }: Messages, target: string): string => {
  const against = /^AUC: competent against (.+)$/.exec(target)?.[1];
  if (against !== undefined) return proof.against(handName(proof, against));
  const [, weak, runs] = /^weakness named: (.+), (one run|mean of four)$/.exec(target) ?? [];
  if (weak !== undefined) return proof.named(handName(proof, weak), runs === 'one run' ? 1 : 4);
  return proof.targets[target] ?? target;
};

const handName = ({ hands }: Messages['proof'], hand: string): string => hands[hand] ?? hand;
