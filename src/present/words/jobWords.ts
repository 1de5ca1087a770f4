import { againstWall, ridgeCarries } from '../../core/level/layout';
import type { Level } from '../../core/level/level';
import { withPosts } from './beamWords';
import { catalogues, type Lang, type Messages } from './messages';

type Job = Pick<Level, 'plan' | 'shed'>;
type Catalogues = Readonly<Record<Lang, Messages>>;

/** The catalogue for a job. One at a wall has to have its words first: see `wordsReady`. */
export const wordsOn = (lang: Lang, job: Job | undefined): Messages => {
  if (job && againstWall(job)) return (onLedgers ?? catalogues)[lang];
  return job && ridgeCarries(job) ? onBeams[lang] : catalogues[lang];
};

/** Settled once a job can be told in its own words. Few jobs are at a wall: what is called otherwise there is loaded for them alone. */
export const wordsReady = async (job: Job): Promise<void> => {
  if (!againstWall(job) || onLedgers) return;
  const { ledgerCatalogues } = await import('./ledgerWords');
  onLedgers = ledgerCatalogues;
};

let onLedgers: Catalogues | undefined;

/** Where the ridge is a beam, posts are the plan's and not props, and are called so. */
const onBeams: Catalogues = {
  en: withPosts(catalogues.en),
  es: withPosts(catalogues.es),
};
