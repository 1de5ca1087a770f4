import { effect, type ReadonlySignal } from '@preact/signals-core';
import type { Step } from '../core/site/attempt';
import type { SoundPort } from '../present/soundPort';
import { soundsFor, type Sound, type SoundName } from '../present/sounds';
import type { Session } from '../session/session';
import type { Settings } from '../session/settings';

/** Hears what the run does. Views do not know of it, and a run goes the same without it. */

export type Heard = {
  readonly session: ReadonlySignal<Session | undefined>;
  readonly settings: ReadonlySignal<Settings>;
  /** Opens a way to play. Called after a first touch and only while sound is on. */
  readonly open: () => Promise<SoundPort>;
  /** Where touches and keys are felt. */
  readonly page: EventTarget;
};

export type Ears = {
  /** Names of the sounds asked for so far, act by act. */
  readonly asked: () => readonly (readonly SoundName[])[];
};

/** A sound that comes later than this after its act is left out, milliseconds: the first has to wait for its file. */
const lateAfter = 1500;

/** Opening is not tried for ever. */
const mostTries = 3;

const touches = ['pointerdown', 'keydown'] as const;

export const ears = ({ session, settings, open, page }: Heard): Ears => {
  const asked: (readonly SoundName[])[] = [];
  let touched = false;
  let tries = 0;
  let port: Promise<SoundPort | undefined> | undefined;

  const opened = (): Promise<SoundPort | undefined> | undefined => {
    if (!touched || !settings.peek().sound || (!port && tries >= mostTries)) return undefined;
    return (port ??= tryOnce());
  };
  const tryOnce = (): Promise<SoundPort | undefined> => {
    tries++;
    return open().catch(() => {
      port = undefined;
      return undefined;
    });
  };
  const ask = (sounds: readonly Sound[]): void => {
    const since = performance.now();
    const ready = sounds.length > 0 ? opened() : undefined;
    if (!ready) return;
    asked.push(sounds.map(({ name }) => name));
    void ready.then((plays) => {
      const { sound, workVolume: work, machineVolume: machine } = settings.peek();
      if (sound && performance.now() - since < lateAfter) plays?.play(sounds, { work, machine });
    });
  };

  const touch = (): void => {
    touched = true;
    touches.forEach((kind) => page.removeEventListener(kind, touch, true));
    void opened();
  };
  touches.forEach((kind) => page.addEventListener(kind, touch, true));
  followRun(session, ({ action, outcome }) => ask(soundsFor(action, outcome)));
  followSettings(settings, {
    on: () => void opened(),
    off: () => void port?.then((plays) => plays?.hush()),
    sample: ask,
  });
  return { asked: () => asked };
};

/** Tells of each new act. Of several done in one go only the last is told: a crew at work, not a heap of noise. */
const followRun = (session: Heard['session'], tell: (step: Step) => void): void => {
  let before: { readonly session: Session | undefined; readonly steps: number } | undefined;
  let last: Step | undefined;
  effect(() => {
    const now = session.value;
    const steps = now?.attempt.value.steps ?? [];
    const grew = before?.session === now && steps.length > (before?.steps ?? 0);
    before = { session: now, steps: steps.length };
    if (!grew) return;
    if (!last)
      queueMicrotask(() => {
        if (last) tell(last);
        last = undefined;
      });
    last = steps.at(-1);
  });
};

type SettingsTold = {
  readonly on: () => void;
  readonly off: () => void;
  readonly sample: (sounds: readonly Sound[]) => void;
};

/** A volume that was changed is heard at once. */
const followSettings = (settings: Heard['settings'], { on, off, sample }: SettingsTold): void => {
  let before = settings.peek();
  effect(() => {
    const now = settings.value;
    const was = before;
    before = now;
    if (now.sound !== was.sound) return now.sound ? on() : off();
    if (now.workVolume !== was.workVolume) sample([{ name: 'hammer', times: 1, delay: 0 }]);
    if (now.machineVolume !== was.machineVolume) sample([{ name: 'lift', times: 1, delay: 0 }]);
  });
};
