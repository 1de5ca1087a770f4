/** How long a page that is being opened again waits for the one before it to let go, ms. Ours. */
const patience = 500;

/** What a browser keeps out other pages with. */
export type Locks = Pick<LockManager, 'request'>;

/**
 * One page at a time works on a run: two would write over each other's acts. A page holds one run, and lets go of it
 * for the next or when it is closed. False while another one holds it. Where a browser knows no locks nobody is kept out.
 */
export const holdOn = (locks: Locks | undefined) => {
  let held: string | undefined;
  let letGo = (): void => undefined;
  const got = (run: string): Promise<void> => {
    letGo();
    held = run;
    return new Promise((done) => (letGo = done));
  };
  return (run: string): Promise<boolean> => {
    if (!locks || held === run) return Promise.resolve(true);
    return new Promise((told) => {
      const mine = (): Promise<void> => {
        told(true);
        return got(run);
      };
      const signal = AbortSignal.timeout(patience);
      locks
        .request(`tack-and-true ${run}`, { signal }, mine)
        .catch((refused: unknown) => told((refused as Error).name !== 'TimeoutError'));
    });
  };
};
