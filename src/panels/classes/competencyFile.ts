import type { Assignment } from '../../content/assignment';
import { rulesVersion } from '../../core/order/version';
import { anchors, competencies } from '../../records/anchors';
import type { LearnerRow } from '../../records/report';
import type { Desk } from '../desk';
import { classWordsOf } from './classWords';
import { whoText } from './reportRows';
import { remarkOn } from './takeIn';

/** What is known of each learner by line of competency, with what each anchor means, the notice, and the remarks. */
export const competencyText = (
  desk: Desk,
  learners: readonly LearnerRow[],
  assignment: Assignment | undefined,
): string => {
  const words = classWordsOf(desk);
  const { anchor, notice11, remark } = words.classes;
  const about = assignment?.id ?? '';
  const file = {
    format: 'tack-and-true/competencies@1',
    notice: notice11,
    rules: rulesVersion,
    ...(assignment ? { assignment } : {}),
    anchors: anchors.map((id) => ({ id, says: anchor.says[id] })),
    lines: competencies.map((id) => ({ id, name: anchor.line[id] })),
    learners: learners.map(({ code, counted, anchors: shown }) => {
      const { rating, note } = remarkOn(desk, about, code);
      return {
        learner: whoText(words, code),
        runs: counted.length,
        lines: shown,
        ...(rating === undefined ? {} : { rating, ratingSays: remark.ratings[rating - 1] }),
        ...(note === '' ? {} : { note }),
      };
    }),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
};
