import { againstWall, ridgeCarries } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import { withPosts } from './beamWords';
import { catalogues, type Lang, type Messages } from './messages';

export type Job = Pick<Level, 'plan' | 'shed'>;
type Catalogues = Readonly<Record<Lang, Messages>>;

/** The catalogue for a job. Of one at a wall its words have to be taken in first. */
export const wordsOn = (lang: Lang, job: Job | undefined): Messages => {
  if (job && againstWall(job)) return (onLedgers ?? catalogues)[lang];
  return job && ridgeCarries(job) ? onBeams[lang] : catalogues[lang];
};

/** Whether the words of a job are still to come: few jobs are at a wall, and what is called otherwise there is loaded for them alone. */
export const lacksWords = (job: Job): boolean => againstWall(job) && onLedgers === undefined;

/** Takes in the words of jobs at a wall. */
export const takeIn = (ledgers: Catalogues): void => {
  onLedgers = ledgers;
};

let onLedgers: Catalogues | undefined;

/** Where the ridge is a beam, posts are the plan's and not props, and are called so. */
const onBeams: Catalogues = {
  en: withPosts(catalogues.en),
  es: withPosts(catalogues.es),
};
