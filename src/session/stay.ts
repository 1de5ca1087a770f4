import type { Store } from './store';

const asked = 'asked to stay';

/**
 * Asks the browser, once on a device, not to clear what is kept when it runs short of room. To be called when there is
 * something to lose: some browsers ask the person.
 */
export const askToStay = async (
  store: Store,
  keeper: Pick<StorageManager, 'persist'> | undefined,
): Promise<void> => {
  if (!store.lasts || !keeper || (await store.get(asked)) === true) return;
  await store.put(asked, true);
  await keeper.persist();
};
