import type { Level } from '../../level/level';
import { murmur3 } from '../../level/draw';
import { wholeJob, within } from '../../level/stages';
import type { Side } from '../../roof/side';
import { begin } from '../../site/take';
import { jobsOf } from './planner';
import { stageOf, type TaskCode, type Wait, type WorkCode } from './task';
import { viewOf } from './view';

/** One line to put in order. */
export type RecallStep = { readonly code: WorkCode; readonly side?: Side };

/** Five jobs that follow each other, told out of order, and the job before them. */
export type Recall = { readonly after: TaskCode | undefined; readonly steps: readonly RecallStep[] };

/** Two of the five the wrong way round, and why that matters. */
export type Misplaced = { readonly early: RecallStep; readonly late: RecallStep; readonly why: Reason };

/** What one crew only likes better is nobody's mistake. */
type Reason = Exclude<Wait['why'], 'way'>;

const asked = 5;
/** With fewer pairs whose order matters, luck would do. Ours. */
const leastPairs = 3;

type Line = RecallStep & { readonly waits: readonly Wait[] };

/** The jobs of a level in the order of its crew list, as they stand before anything is done. */
const linesOf = (level: Level): readonly Line[] => {
  const view = viewOf(begin(level, 1, 'own'));
  return jobsOf(view).flatMap(({ task: { code, side, waits } }): readonly Line[] =>
    code === 'handOver' || code === 'agree' || !within(level.stages ?? wholeJob, stageOf[code])
      ? []
      : [{ code, ...(side === undefined ? {} : { side }), waits: waits(view) }],
  );
};

/** Five lines for a level, the same for the same number; undefined where the job is too short to ask. */
export const recallFor = (level: Level, number: number): Recall | undefined => {
  const lines = linesOf(level);
  const starts = lines.flatMap((_, i) =>
    i + asked <= lines.length && pairsOf(lines, lines.slice(i, i + asked)).length >= leastPairs ? [i] : [],
  );
  const start = starts[murmur3(`${level.id}|recall`, number) % Math.max(1, starts.length)];
  if (start === undefined) return undefined;
  const steps = lines
    .slice(start, start + asked)
    .map(({ code, side }) => ({ code, ...(side ? { side } : {}) }));
  return { after: lines[start - 1]?.code, steps: shuffled(steps, number) };
};

/** What is the wrong way round in an answer; nothing where a careful crew might work so. */
export const misplacedIn = (level: Level, answer: readonly RecallStep[]): readonly Misplaced[] =>
  pairsOf(linesOf(level), answer)
    .filter(({ early, late }) => at(answer, early) > at(answer, late))
    .map(({ early, late, why }) => ({ early, late, why }));

const at = (steps: readonly RecallStep[], { code, side }: RecallStep): number =>
  steps.findIndex((one) => one.code === code && one.side === side);

/** All pairs among some lines whose order matters, directly or by way of lines between them. */
const pairsOf = (lines: readonly Line[], some: readonly RecallStep[]): readonly Misplaced[] =>
  some.flatMap((late) =>
    some.flatMap((early): readonly Misplaced[] => {
      const why = waitsFor(lines, late, early);
      return why === undefined ? [] : [{ early, late, why }];
    }),
  );

/** Why one line waits for another, directly or by way of others: the reason it has itself. */
const waitsFor = (lines: readonly Line[], late: RecallStep, early: RecallStep): Reason | undefined => {
  const line = lines[at(lines, late)];
  for (const { on, side, why } of line?.waits ?? []) {
    if (why === 'way') continue;
    const first = lines.filter((one) => one.code === on && (side === undefined || one.side === side));
    if (first.some((one) => one.code === early.code && one.side === early.side)) return why;
    if (first.some((one) => waitsFor(lines, one, early) !== undefined)) return why;
  }
  return undefined;
};

/** By the draw of a number, never as it was. */
const shuffled = (steps: readonly RecallStep[], number: number): readonly RecallStep[] => {
  const mixed = [...steps]
    .map((step, i) => ({ step, key: murmur3(`${step.code}${step.side ?? ''}|${i}`, number) }))
    .sort((a, b) => a.key - b.key)
    .map(({ step }) => step);
  return mixed.every((step, i) => step === steps[i]) ? [...mixed].reverse() : mixed;
};
