import { signal } from '@preact/signals-core';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ears } from '../../src/audio/ears';
import type { Action } from '../../src/core/site/action';
import type { SoundPort } from '../../src/present/soundPort';
import { beginRun, type Session } from '../../src/session/session';
import { usualSettings } from '../../src/session/settings';
import { memoryStore } from '../../src/session/store';
import { levelOf } from '../site/levels';

const level = levelOf('garden-hut');
const joist: Action = { type: 'setTie', kind: 'joist', station: 1 };
const braced: Action = { type: 'brace', kind: 'wall', from: 'street', to: 'ground' };
const agreed: Action = { type: 'agree', topic: 'signals', value: 'standard' };

/** Lets promises that are settled go through. */
const soon = (): Promise<void> => new Promise((done) => setTimeout(done));

/** A page, a run on it, and a port that only notes what it is asked for. */
const listening = async (open?: () => Promise<SoundPort>) => {
  const run = await beginRun(memoryStore(), { level, seed: 3, mode: 'own' });
  const session = signal<Session | undefined>(run);
  const settings = signal(usualSettings('en', false));
  const page = new EventTarget();
  const port = { play: vi.fn<SoundPort['play']>(), hush: vi.fn<SoundPort['hush']>() };
  const opening = vi.fn(open ?? (() => Promise.resolve(port)));
  const { asked } = ears({ session, settings, open: opening, page });
  const touch = (): boolean => page.dispatchEvent(new Event('pointerdown'));
  const set = (part: Partial<typeof settings.value>): void => {
    settings.value = { ...settings.value, ...part };
  };
  return { run, session, port, opening, asked, touch, set };
};

describe('ears', () => {
  let all: Awaited<ReturnType<typeof listening>>;
  beforeEach(async () => {
    all = await listening();
  });

  it('open nothing and ask for nothing before the first touch', async () => {
    all.run.do(joist);
    await soon();
    expect(all.opening).not.toHaveBeenCalled();
    expect(all.asked()).toEqual([]);
    all.touch();
    all.touch();
    expect(all.opening).toHaveBeenCalledTimes(1);
  });

  it('ask for the sound of each act, as loud as was set', async () => {
    all.touch();
    all.set({ machineVolume: 30 });
    await soon();
    all.port.play.mockClear();
    all.run.do(joist);
    await soon();
    expect(all.port.play.mock.calls).toEqual([
      [[{ name: 'rafter', times: 1, delay: 0 }], { work: 70, machine: 30 }],
    ]);
    all.run.do(agreed);
    await soon();
    expect(all.port.play).toHaveBeenCalledTimes(1);
  });

  it('hear only the last of several acts done in one go', async () => {
    all.touch();
    all.run.do(braced);
    all.run.do(joist);
    await soon();
    expect(all.asked()).toEqual([['rafter']]);
  });

  it('hear nothing of an act taken back, nor of a run that is opened', async () => {
    all.touch();
    all.run.do(joist);
    await soon();
    all.run.undo();
    await soon();
    const other = await beginRun(memoryStore(), { level, seed: 4, mode: 'own' }, [braced, joist]);
    all.session.value = other;
    await soon();
    expect(all.asked()).toEqual([['rafter']]);
    other.do({ type: 'setTie', kind: 'joist', station: 2 });
    await soon();
    expect(all.asked()).toHaveLength(2);
  });

  it('open nothing while sound is off, and end what sounds when it is put off', async () => {
    all.set({ sound: false });
    all.touch();
    all.run.do(joist);
    await soon();
    expect(all.opening).not.toHaveBeenCalled();
    expect(all.asked()).toEqual([]);
    all.set({ sound: true });
    await soon();
    expect(all.opening).toHaveBeenCalledTimes(1);
    all.set({ sound: false });
    await soon();
    expect(all.port.hush).toHaveBeenCalledTimes(1);
  });

  it('let a volume that was changed be heard', async () => {
    all.touch();
    all.set({ workVolume: 10 });
    all.set({ machineVolume: 10 });
    expect(all.asked()).toEqual([['hammer'], ['lift']]);
  });

  it('give up on what cannot be opened, and the run goes on', async () => {
    const deaf = await listening(() => Promise.reject(new Error('no audio here')));
    deaf.touch();
    for (const station of [1, 2, 3, 4, 5]) {
      await soon();
      expect(deaf.run.do({ type: 'setTie', kind: 'joist', station }).ok).toBe(true);
    }
    await soon();
    expect(deaf.opening).toHaveBeenCalledTimes(3);
  });
});
