import type { Hand } from './hand';

/** Does nothing and hands over. */
export const idle: Hand = {
  name: 'idle',
  player:
    () =>
    ({ site }) =>
      site.handedOver ? undefined : { type: 'handOver' },
};
