import { parseArgs } from 'node:util';
import { readAssignment, type Assignment } from '../content/assignment';
import { readAttempt, type AttemptFile } from '../content/attemptFile';
import type { Complaint, Read } from '../content/complaint';
import type { Score } from '../core/score/score';
import { classCatalogues } from '../present/words/classMessages';
import { judgeFile, type Reader } from '../records/verdict';
import type { Why } from '../records/why';
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
  const desk: Reader = { level: level.value, assignment: assignment?.value, learner: parsed.values.learner };
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
const gradeOne = (desk: Reader, file: string): number => {
  const text = readFile(file);
  if (!text.ok) return refuseInput(file, text.complaints);
  const attempt = readAttempt(text.value);
  if (!attempt.ok)
    return attempt.complaints.every(isDigest)
      ? print({ file, holds: false, why: whyText({ code: 'digest', names: [] }) })
      : refuseInput(file, attempt.complaints);
  return print(graded(desk, file, attempt.value));
};

const isDigest = ({ path, wrong }: Complaint): boolean => path === 'digest' && wrong[0] === 'digestOff';

const print = (graded: Graded): number => {
  process.stdout.write(`${JSON.stringify(graded)}\n`);
  return graded.holds === false ? 1 : 0;
};

const graded = (desk: Reader, file: string, handed: AttemptFile): Graded => {
  const { holds, why, played } = judgeFile(desk, handed);
  const { total, pass, parts, done, sound, findings } = played?.score ?? {};
  return {
    file,
    holds,
    ...(why ? { why: whyText(why) } : {}),
    ...(played ? ({ total, pass, parts, done, sound, findings } as Score) : {}),
  };
};

const whyText = ({ code, names }: Why): string => classCatalogues.en.classes.why[code](names);

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
