import { parseArgs } from 'node:util';
import { readAssignment, type Assignment } from '../content/assignment';
import { readAttempt, type AttemptFile } from '../content/attemptFile';
import { levelDigest } from '../content/canonical';
import type { Complaint, Read } from '../content/complaint';
import { rulesVersion } from '../core/order/version';
import type { Level } from '../core/level/level';
import type { Score } from '../core/score/score';
import { scoreOf } from '../core/score/scored';
import { replay } from '../core/hands/opened';
import { whyNotTheirs } from './handedIn';
import { loadLevel } from './levelFiles';
import { readFile, refuseInput } from './readFile';
import type { Verb } from './verbs';

const usage = 'tt grade: grade LEVEL ATTEMPT.json… [--assignment FILE] [--learner CODE]';

/** One graded file as printed: whether it holds, why not, and what its acts come to. */
type Graded = {
  readonly file: string;
  readonly holds: boolean | 'otherRules';
  readonly why?: string;
} & Partial<Pick<Score, 'total' | 'pass' | 'parts' | 'done' | 'sound' | 'findings'>>;

type Desk = {
  readonly level: Level;
  readonly assignment: Assignment | undefined;
  readonly learner: string | undefined;
};

/** `grade LEVEL ATTEMPT.json…`: replays each attempt, scores it afresh and believes only that. */
export const gradeVerb: Verb = (args) => {
  const parsed = parsedOf(args);
  if (typeof parsed === 'string') return complain(parsed);
  const [levelName, ...files] = parsed.positionals;
  if (levelName === undefined || files.length === 0) return complain(usage);
  const level = loadLevel(levelName);
  if (!level.ok) return refuseInput(levelName, level.complaints);
  const assignment = assignmentOf(parsed.values.assignment);
  if (assignment && !assignment.ok) return refuseInput(parsed.values.assignment ?? '', assignment.complaints);
  const desk: Desk = { level: level.value, assignment: assignment?.value, learner: parsed.values.learner };
  return Math.max(...files.map((file) => gradeOne(desk, file)));
};

const complain = (line: string): 2 => {
  process.stderr.write(`${line}\n`);
  return 2;
};

const assignmentOf = (file: string | undefined): Read<Assignment> | undefined => {
  if (file === undefined) return undefined;
  const text = readFile(file);
  return text.ok ? readAssignment(text.value) : text;
};

/** 0 when it holds or was made under other rules, 1 when it does not hold, 2 when it cannot be read. */
const gradeOne = (desk: Desk, file: string): number => {
  const text = readFile(file);
  if (!text.ok) return refuseInput(file, text.complaints);
  const attempt = readAttempt(text.value);
  if (!attempt.ok)
    return attempt.complaints.every(isDigest)
      ? print({ file, holds: false, why: 'the digest does not fit the rest of the file' })
      : refuseInput(file, attempt.complaints);
  return print(graded(desk, file, attempt.value));
};

const isDigest = ({ path, wrong }: Complaint): boolean =>
  path === 'digest' && wrong.startsWith('does not fit');

const print = (graded: Graded): number => {
  process.stdout.write(`${JSON.stringify(graded)}\n`);
  return graded.holds === false ? 1 : 0;
};

const graded = (desk: Desk, file: string, handed: AttemptFile): Graded => {
  const foreign = whyNotThisLevel(desk.level, handed) ?? whyNotTheirs(desk, handed);
  if (foreign !== undefined) return { file, holds: false, why: foreign };
  const score = scoreOf(replay({ level: desk.level, seed: handed.seed, mode: handed.mode }, handed.actions));
  const { total, pass, parts, done, sound, findings } = score;
  const told = { total, pass, parts, done, sound, findings };
  if (handed.rules !== rulesVersion)
    return {
      file,
      holds: 'otherRules',
      why: `made under rules ${handed.rules}, scored here under rules ${rulesVersion}`,
      ...told,
    };
  const broken = whyNotSo(handed.claimed, score);
  return broken === undefined ? { file, holds: true, ...told } : { file, holds: false, why: broken, ...told };
};

const whyNotThisLevel = (level: Level, { level: theirs }: AttemptFile): string | undefined => {
  if (theirs.id !== level.id) return `played on level ${theirs.id}, not ${level.id}`;
  return theirs.digest === levelDigest(level) ? undefined : 'played on another version of this level';
};

/** Two scores of the same acts are the same to the last bit; this much is left to how a number was written down. */
const sameNumber = (a: number | undefined, b: number | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && Math.abs(a - b) < 1e-9);

const whyNotSo = (claimed: AttemptFile['claimed'], { total, parts }: Score): string | undefined => {
  if (!sameNumber(claimed.total, total)) return `claims ${claimed.total}, its acts give ${total}`;
  const names = ['order', 'checks', 'fit', 'eye', 'economy'] as const;
  const off = names.find((name) => !sameNumber(claimed.parts[name], parts[name]));
  return off === undefined
    ? undefined
    : `claims ${claimed.parts[off]} for ${off}, its acts give ${parts[off]}`;
};

const parsedOf = (args: readonly string[]) => {
  const text = { type: 'string' } as const;
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { assignment: text, learner: text },
    });
  } catch (error) {
    return `tt grade: ${error instanceof Error ? error.message.split('. ')[0] : String(error)} (${usage})`;
  }
};
