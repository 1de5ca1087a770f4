import { fewestToMove } from '../core/order/fewest';
import { judgeOrder } from '../core/order/judged';
import { orderRules } from '../core/order/rules';
import type { WorkCode } from '../core/order/crew/task';
import type { Attempt } from '../core/site/attempt';
import { jointName, memberName } from './words/names';
import type { Messages } from './words/messages';

/** What the order cost in all, and the fewest things that would have to be done sooner or later for every rule to hold. */
export type OrderCost = {
  readonly minutes: number;
  readonly sooner: readonly string[];
  readonly later: readonly string[];
};

/** The job of the crew list that brings about what a rule asks for first. */
const jobs: Readonly<Record<string, WorkCode>> = {
  wallsBraced: 'braceWalls',
  wallsTied: 'tieWalls',
  laidOut: 'layOut',
  ridgeLengthSettled: 'settleRidge',
  endsProved: 'proveEnds',
  middleLocked: 'lockMiddle',
  ledgerNailed: 'fixLedger',
  bracedAlong: 'braceRidge',
  postsFixed: 'setPosts',
  strung: 'string',
  tailLined: 'tails',
  lineSnapped: 'chalk',
  readyToProp: 'upper',
};

/** Undefined where every rule was kept. */
export const orderCost = (words: Messages, attempt: Attempt): OrderCost | undefined => {
  const verdicts = judgeOrder(attempt).filter(({ lost }) => lost > 0);
  if (verdicts.length === 0) return undefined;
  const cost = (id: string): number => orderRules.find((rule) => rule.id === id)?.rework ?? 0;
  const moves = fewestToMove(verdicts);
  const named = (part: 'sooner' | 'later'): readonly string[] => [
    ...new Set(moves.filter((move) => (part === 'sooner') === isMilestone(move)).map(nameIn(words))),
  ];
  return {
    minutes: Math.round(verdicts.reduce((sum, { rule, lost }) => sum + cost(rule) * lost, 0)),
    sooner: named('sooner'),
    later: named('later'),
  };
};

const headOf = (move: string): string => move.split('.')[0] ?? move;

const isMilestone = (move: string): boolean => headOf(move) in jobs;

const nameIn =
  (words: Messages) =>
  (move: string): string => {
    const job = jobs[headOf(move)];
    if (job) return words.tasks[job];
    if (move === 'unhooked') return words.tasks.letGo;
    const thing = move.replace(/^(out|tack):/, '');
    return thing.includes(':') ? jointName(words, thing) : memberName(words, thing);
  };
