import type { Sound, SoundGroup } from './sounds';

/** How loud each group is to be, 0 to 100. */
export type Loudness = Readonly<Record<SoundGroup, number>>;

/** What plays sounds. Whatever goes wrong behind it stays there: nobody has to hear anything to work. */
export type SoundPort = {
  readonly play: (sounds: readonly Sound[], loudness: Loudness) => void;
  /** Ends what still sounds or waits. */
  readonly hush: () => void;
};
