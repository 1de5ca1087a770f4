import { Howl, Howler } from 'howler';
import type { SoundPort } from '../present/soundPort';
import { groupOf, type SoundName } from '../present/sounds';
import { spriteTable } from './spriteTable';

/** The only file that knows the library that plays. Asked for with the first touch, not before. */

const file = new URL('../../assets/sounds/sprite.mp3', import.meta.url).href;

/** Some decoders keep the encoder's lead-in, so that all lies later by up to this much, milliseconds. The gap has room. */
const leadIn = 60;

/** How long a context that was interrupted may take to come back, milliseconds. A sound later than that is none. */
const patience = 600;

/** Fetches the sounds and opens a way to play them; rejects where there is no audio or no file. */
export const howlerPort = async (): Promise<SoundPort> => {
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(`sounds: ${answer.status}`);
  const address = URL.createObjectURL(await answer.blob());
  const howl = await loaded(address).finally(() => URL.revokeObjectURL(address));
  const waiting = new Set<ReturnType<typeof setTimeout>>();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void awake();
  });
  addEventListener('pointerdown', () => void awake(), { capture: true, passive: true });

  const sound = (name: SoundName, volume: number): void => {
    const id = howl.play(name);
    howl.volume(volume, id);
  };
  const later = (seconds: number, does: () => void): void => {
    // At once, before the act is drawn: a drawing may take longer than an ear waits.
    if (seconds === 0) return does();
    const timer = setTimeout(() => {
      waiting.delete(timer);
      does();
    }, seconds * 1000);
    waiting.add(timer);
  };
  const forget = (): void => {
    waiting.forEach((timer) => clearTimeout(timer));
    waiting.clear();
  };
  return {
    play: (sounds, loudness) =>
      void awake().then((plays) => {
        if (!plays) return;
        // Who works fast hears each act begin, not all that is still to come of the ones before.
        forget();
        for (const { name, times, delay } of sounds) {
          // An ear hears steps of loudness as steps of ratio.
          const part = loudness[groupOf(name)] / 100;
          const every = spacing(name);
          for (let i = 0; i < times && part > 0; i++)
            later(delay + i * every, () => sound(name, part * part));
        }
      }),
    hush: () => {
      forget();
      howl.stop();
    },
  };
};

/** Seconds from one to the next of the same sound: nearly its length, a nail gun a little slower. */
const spacing = (name: SoundName): number => Math.max(0.3, (spriteTable[name][1] / 1000) * 0.95);

const loaded = (address: string): Promise<Howl> =>
  new Promise((done, failed) => {
    const sprite = Object.fromEntries(
      Object.entries(spriteTable).map(([name, [from, long]]): [string, [number, number]] => [
        name,
        [from, long + leadIn],
      ]),
    );
    const howl: Howl = new Howl({
      src: [address],
      format: ['mp3'],
      sprite,
      onload: () => done(howl),
      onloaderror: () => failed(new Error('sounds cannot be read here')),
    });
  });

/** True once the context runs. A call or a locked phone interrupts it, and the library does not bring it back. */
const awake = async (): Promise<boolean> => {
  const context = Howler.ctx as AudioContext | null;
  if (!context || context.state === 'closed') return false;
  if (context.state === 'running') return true;
  const late = new Promise<void>((done) => setTimeout(done, patience));
  await Promise.race([context.resume().catch(() => undefined), late]);
  return (context.state as AudioContextState) === 'running';
};
