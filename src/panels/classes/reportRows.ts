import type { Mode } from '../../core/level/mode';
import { passLine } from '../../core/score/scored';
import type { Part } from '../../core/score/score';
import type { ClassMessages } from '../../present/words/classMessages';
import { pick } from '../../present/words/spotNames';
import { partNames } from '../../records/marked';
import type { Entry, LearnerRow } from '../../records/report';
import { leastRuns, type Trend } from '../../records/trend';
import type { Why } from '../../records/why';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { pointsText, shareText } from './figures';

/** A table as it stands on the screen; a file of it has the same rows. */
export type Table = { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

export const whoText = ({ classDoor }: ClassMessages, code: string): string =>
  code === '' ? classDoor.nobody : code;

export const jobText = (desk: Desk, id: string): string =>
  desk.levels.find((level) => level.id === id)?.title[desk.settings.value.lang] ?? id;

/** Why a run does not hold, its parts and ways of playing by their names on the screen. */
export const whyText = (words: ClassMessages, { code, names }: Why): string => {
  const [first = '', ...rest] = names;
  if (code === 'part')
    return words.classes.why.part([words.ui.debrief.parts[first as Part] ?? first, ...rest]);
  if (code === 'otherMode')
    return words.classes.why.otherMode(names.map((name) => pick(words.ui.mode, name)));
  return words.classes.why[code](names);
};

/** Runs, a row each. */
export const runTable = (desk: Desk, entries: readonly Entry[]): Table => {
  const words = classWordsOf(desk);
  const { learner, job, how, holds, because, points, done, minutes, missed } = words.classes.results;
  const parts = partNames.map((part) => words.ui.debrief.parts[part]);
  return {
    head: [learner, job, how, holds, because, points, ...parts, done, minutes, missed],
    rows: entries.map((entry) => runRow(desk, entry)),
  };
};

const runRow = (desk: Desk, { marked: { learner = '', level, mode, holds, why, told } }: Entry) => {
  const words = classWordsOf(desk);
  const { results } = words.classes;
  return [
    whoText(words, learner),
    jobText(desk, level),
    pick(words.ui.mode, mode satisfies Mode),
    holds === true ? results.yes : holds === false ? results.no : results.other,
    why ? whyText(words, why) : '',
    told ? pointsText(told.total) : '–',
    ...partNames.map((part) => shareText(told?.parts[part])),
    shareText(told?.done),
    told ? String(told.minutes) : '–',
    told && told.planted > 0 ? results.of(told.missed.length, told.planted) : '–',
  ];
};

/** Learners, a row each. `line`: points from which a run is at the pass line. */
export const learnerTable = (
  desk: Desk,
  learners: readonly LearnerRow[],
  line: number = passLine.total,
): Table => {
  const words = classWordsOf(desk);
  const { results } = words.classes;
  const parts = partNames.map((part) => words.ui.debrief.parts[part]);
  return {
    head: [
      results.learner,
      results.runs,
      results.line,
      results.total,
      ...parts,
      results.weakest,
      results.trend,
    ],
    rows: learners.map((row) => [
      whoText(words, row.code),
      results.of(row.counted.length, row.entries.length),
      results.of(atLine(row, line), row.counted.length),
      row.total === undefined ? '–' : pointsText(row.total),
      ...partNames.map((part) => shareText(row.parts[part])),
      row.weakest === undefined ? '–' : words.ui.debrief.parts[row.weakest],
      trendText(words, row),
    ]),
  };
};

const atLine = ({ counted }: LearnerRow, line: number): number =>
  counted.filter(({ marked: { told } }) => told !== undefined && told.total >= line).length;

const trendText = ({ classes: { results } }: ClassMessages, { trend, counted }: LearnerRow): string => {
  if (!trend) return counted.length < leastRuns ? results.few(leastRuns) : results.unknownError;
  return results.trends[trend.says](signed(trend), pointsText(trend.band));
};

/** Up and down are said in words; only a change that says neither has its sign. */
const signed = ({ change, says }: Trend): string =>
  `${says === 'unclear' && change < 0 ? '−' : ''}${pointsText(Math.abs(change))}`;
