import type { ClassMessages } from '../../present/words/classMessages';
import { complaintLine, linkNames } from '../../present/words/refusalMessages';
import type { Refused } from './classState';

/** One line about a file or a link; a seal that is off is said as the report says it. */
export const refusedLine = ({ lang, classes }: ClassMessages, { from, complaint }: Refused): string => {
  if (from === undefined) return complaintLine(linkNames[lang], complaint, lang);
  return complaint.path === 'digest' && complaint.wrong[0] === 'digestOff'
    ? `${from}: ${classes.why.digest()}`
    : complaintLine(from, complaint, lang);
};
