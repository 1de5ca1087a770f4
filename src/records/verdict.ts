import type { Assignment } from '../content/assignment';
import type { AttemptFile } from '../content/attemptFile';
import { levelDigest } from '../content/canonical';
import { replay } from '../core/hands/opened';
import type { Level } from '../core/level/level';
import { rulesVersion } from '../core/order/version';
import type { Score } from '../core/score/score';
import { scoreOf } from '../core/score/scored';
import type { Attempt } from '../core/site/attempt';
import { whyNotTheirs } from './handedIn';
import { why, type Why } from './why';

/** What a reader of attempt files holds them against. */
export type Reader = {
  readonly level: Level;
  readonly assignment: Assignment | undefined;
  readonly learner: string | undefined;
};

/** Whether an attempt file holds; the run its acts make and the score of that, where they were played again. */
export type Verdict = {
  readonly holds: boolean | 'otherRules';
  readonly why?: Why;
  readonly played?: { readonly attempt: Attempt; readonly score: Score };
};

/** Replays an attempt and scores it afresh. What the file claims is only compared, never believed. */
export const judgeFile = (reader: Reader, handed: AttemptFile): Verdict => {
  const foreign = whyNotThisLevel(reader.level, handed) ?? whyNotTheirs(reader, handed);
  if (foreign) return { holds: false, why: foreign };
  const attempt = replay({ level: reader.level, seed: handed.seed, mode: handed.mode }, handed.actions);
  const played = { attempt, score: scoreOf(attempt) };
  if (handed.rules !== rulesVersion)
    return {
      holds: 'otherRules',
      why: why('otherRules', String(handed.rules), String(rulesVersion)),
      played,
    };
  const broken = whyNotSo(handed.claimed, played.score);
  return broken ? { holds: false, why: broken, played } : { holds: true, played };
};

const whyNotThisLevel = (level: Level, { level: theirs }: AttemptFile): Why | undefined => {
  if (theirs.id !== level.id) return why('otherLevel', theirs.id, level.id);
  return theirs.digest === levelDigest(level) ? undefined : why('changedLevel', level.id);
};

/** Two scores of the same acts are the same to the last bit; this much is left to how a number was written down. */
const sameNumber = (a: number | undefined, b: number | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && Math.abs(a - b) < 1e-9);

const whyNotSo = (claimed: AttemptFile['claimed'], { total, parts }: Score): Why | undefined => {
  if (!sameNumber(claimed.total, total)) return why('total', String(claimed.total), String(total));
  const names = ['order', 'checks', 'fit', 'eye', 'economy'] as const;
  const off = names.find((name) => !sameNumber(claimed.parts[name], parts[name]));
  return off === undefined
    ? undefined
    : why('part', off, String(claimed.parts[off] ?? '–'), String(parts[off] ?? '–'));
};
