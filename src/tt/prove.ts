import { writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { modesOf, type Level } from '../core/level/level';
import { rulesVersion } from '../core/order/version';
import { courseFiles, loadLevel } from './levelFiles';
import { jobKey, type Told } from './prove/job';
import { keep, keptIn } from './prove/keep';
import { sizesFor, jobsFor, shareOf, type Sizes } from './prove/plan';
import { playAll } from './prove/pool';
import { errorOn, linesFor, linesOver, lowered, normOf, playedOn } from './prove/targets';
import type { Handful } from './prove/worker';
import { refuseInput } from './readFile';
import type { Verb } from './verbs';

const usage = 'tt prove: prove [--runs N] [--quick] [--keep FILE] [--last FILE] [LEVEL…]';

/** The levels that are proved in full: the 20 ft and the 34 ft gable. */
const reference: readonly string[] = ['boathouse', 'hay-barn'];
/** The part of the runs that every other level gets. */
const otherShare = 1 / 20;
/** A quick proof, about a minute on two cores: the smallest level alone, in full, with as many runs as this. */
const quickRuns = 10;
const quickLevels: readonly string[] = ['garden-hut'];
const usualRuns = 200;
/** Fewer faulty boards or conditions than this and a level is for practice, not graded. */
const gradedFrom = 4;

type Asked = {
  readonly runs: number;
  readonly quick: boolean;
  readonly keep: string | undefined;
  readonly last: string | undefined;
  readonly levels: readonly string[];
};

type Subject = { readonly level: Level; readonly path: string; readonly sizes: Sizes };

/** `prove`: statistics over the crew hands, each with its target and whether it is reached. */
export const proveVerb: Verb = async (args) => {
  const asked = askedOf(args);
  if (typeof asked === 'string') {
    process.stderr.write(`${asked}\n`);
    return 2;
  }
  const subjects = subjectsOf(asked);
  if (!subjects) return 2;
  const told = await toldFor(subjects, asked.keep);
  const lines = [
    ...subjects.flatMap(({ level, sizes }) => linesFor(level, told, sizes)),
    ...linesOver(
      subjects.map(({ level }) => level.id).filter((id) => reference.includes(id)),
      told,
    ),
  ];
  for (const line of lines) process.stdout.write(`${JSON.stringify(line)}\n`);
  const summary = summaryOf(subjects, told, asked.runs);
  process.stdout.write(`${JSON.stringify({ lines: lines.length, ...summary })}\n`);
  if (asked.last !== undefined)
    writeFileSync(asked.last, `${JSON.stringify({ ...summary, lines }, undefined, 2)}\n`);
  return lines.every(({ reached }) => reached) ? 0 : 1;
};

const summaryOf = (subjects: readonly Subject[], told: readonly Told[], runs: number) => ({
  rules: rulesVersion,
  runs,
  levels: subjects.map(({ level }) => ({
    level: level.id,
    errorOfOneRun: errorOn(level.id, told),
    competent: normOf(playedOn(level.id, told)),
    lowered: lowered(playedOn(level.id, told)),
  })),
});

/** What was kept, and what is still to be played. */
const toldFor = async (subjects: readonly Subject[], file: string | undefined): Promise<readonly Told[]> => {
  const jobs = subjects.flatMap(({ level, path, sizes }) =>
    jobsFor(level.id, sizes).map((job) => ({ job, path })),
  );
  const wanted = new Set(jobs.map(({ job }) => jobKey(job)));
  const kept = (file === undefined ? [] : keptIn(file)).filter((one) => wanted.has(jobKey(one)));
  const known = new Set(kept.map(jobKey));
  const open: Handful = jobs.filter(({ job }) => !known.has(jobKey(job)));
  const told: Told[] = [...kept];
  await playAll(open, {
    workers: availableParallelism(),
    onTold: (some) => {
      told.push(...some);
      if (file !== undefined) keep(file, some);
      process.stderr.write(`\r${told.length} of ${jobs.length}`);
    },
  });
  process.stderr.write('\n');
  return told;
};

const subjectsOf = ({ levels, runs, quick }: Asked): readonly Subject[] | undefined => {
  const full = sizesFor(runs);
  const subjects: Subject[] = [];
  const named = levels.length === 0 && quick ? quickLevels : levels;
  for (const path of named.length > 0 ? named : courseFiles()) {
    const level = loadLevel(path);
    if (!level.ok) {
      refuseInput(path, level.complaints);
      return undefined;
    }
    if (named.length === 0 && !isGraded(level.value)) continue;
    const inFull = quick || reference.includes(level.value.id);
    subjects.push({ level: level.value, path, sizes: inFull ? full : shareOf(full, otherShare) });
  }
  return subjects;
};

/** A level people are judged by: it has a Check-off, and enough to find. */
const isGraded = (level: Level): boolean =>
  modesOf(level).includes('check-off') && level.asFound.planted.length >= gradedFrom;

const askedOf = (args: readonly string[]): Asked | string => {
  const text = { type: 'string' } as const;
  try {
    const { positionals, values } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { runs: text, quick: { type: 'boolean' }, keep: text, last: text },
    });
    const quick = values.quick === true;
    const runs = Number(values.runs ?? (quick ? quickRuns : usualRuns));
    if (!Number.isInteger(runs) || runs < 4 || runs > 100_000)
      return `tt prove: --runs: ${values.runs} is no number of runs (a whole number, 4 to 100000)`;
    return { runs, quick, keep: values.keep, last: values.last, levels: positionals };
  } catch (error) {
    return `tt prove: ${error instanceof Error ? error.message.split('. ')[0] : String(error)} (${usage})`;
  }
};
