import type { Drawings } from '../present/stagePort';

/** The drawings, and word of the first that was drawn. */
export const withFirst = (
  drawings: Drawings,
): { readonly drawings: Drawings; readonly drawn: Promise<void> } => {
  let first: () => void = () => undefined;
  const drawn = new Promise<void>((done) => {
    first = done;
  });
  return {
    drawn,
    drawings: {
      ...drawings,
      thumb: (...asked) => {
        drawings.thumb(...asked);
        first();
      },
      stage: async (host) => {
        const stage = await drawings.stage(host);
        return { ...stage, show: (view) => stage.show(view).then(first) };
      },
    },
  };
};

/** A page without a drawing waits this long before it keeps itself, ms. Ours. */
const atLatest = 5000;

/**
 * Has the browser keep the whole site, so that it opens without a network. Only once something was drawn: the first
 * load is not slowed. Pages opened from a file, and browsers that cannot, go without.
 */
export const keepForOffline = async (drawn: Promise<void>): Promise<void> => {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator) || !location.protocol.startsWith('http'))
    return;
  await Promise.race([drawn, new Promise((done) => setTimeout(done, atLatest))]);
  await new Promise((done) => setTimeout(done));
  // Refused, in a private window or on plain http elsewhere: the page works all the same.
  await navigator.serviceWorker.register('./offline.js').catch(() => undefined);
};
