import { lacksWords, takeIn, type Job } from '../present/words/jobWords';

/** Settled once a job can be told in its own words. */
export const wordsReady = async (job: Job): Promise<void> => {
  if (!lacksWords(job)) return;
  const { ledgerCatalogues } = await import('../present/words/ledgerWords');
  takeIn(ledgerCatalogues);
};
