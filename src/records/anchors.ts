import { passLine } from '../core/score/scored';
import { isAlone, type Marked, type Told } from './marked';

/** Lines of competency that a report tells of a learner, each by one of four anchors. */
export const competencies = ['order', 'checks', 'fit', 'eye', 'safety'] as const;
export type Competency = (typeof competencies)[number];

export const anchors = ['notShown', 'withHelp', 'alone', 'aloneCatching'] as const;
export type Anchor = (typeof anchors)[number];

/** The farthest anchor that runs which hold have shown on a line. Watched runs show nothing of the learner. */
export const anchorOf = (line: Competency, runs: readonly Marked[]): Anchor => {
  const shown = runs.filter(
    ({ holds, mode, told }) => holds === true && mode !== 'watch' && told !== undefined && meets(line, told),
  );
  const alone = shown.filter(({ mode }) => isAlone(mode));
  if (alone.some(({ told }) => told !== undefined && catchesAll(told))) return 'aloneCatching';
  if (alone.length > 0) return 'alone';
  return shown.length > 0 ? 'withHelp' : 'notShown';
};

/** To standard: the part at its bar on a roof that was framed; for safety, nobody in danger and nothing down. */
const meets = (line: Competency, { parts, done, broken }: Told): boolean => {
  if (done < passLine.done) return false;
  if (line === 'safety') return !broken.some(isDanger);
  const part = parts[line];
  return part !== undefined && part >= passLine[line];
};

const isDanger = (code: string): boolean => /^S\d/.test(code) || code === 'cameDown';

/** There was something to catch, and none of it was missed. */
const catchesAll = ({ planted, missed }: Told): boolean => planted > 0 && missed.length === 0;
