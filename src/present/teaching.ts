import type { Mode } from '../core/level/mode';

/**
 * Whether a view may be opened that shows what eyes and tools on the site could not: forces, and what is out of true drawn
 * many times larger. It teaches, so it is there to be opened wherever somebody learns, and begins closed: on your own the
 * learner decides to look. Check-off asks for finding out with tools alone, and there it is not offered.
 */
export const offersTeaching = (mode: Mode): boolean => mode !== 'check-off';
