import { describe, expect, it } from 'vitest';
import { loadSettings, saveSettings, usualSettings } from '../../src/session/settings';
import { memoryStore } from '../../src/session/store';

const usual = usualSettings('en', false);

const keptAs = async (kept: unknown) => {
  const store = memoryStore();
  await store.put('settings', kept);
  return loadSettings(store, usual);
};

/** As they were kept before there was sound or motion. */
const old = {
  lang: 'es',
  theme: 'night',
  units: 'mm',
  hand: 'left',
  text: '150',
  keys: false,
  looks: [3, 9],
};

describe('settings', () => {
  it('kept before there was sound or motion are kept, with the usual of both', async () => {
    const { sound, workVolume, machineVolume, motion } = usual;
    expect(await keptAs(old)).toEqual({ ...old, sound, workVolume, machineVolume, motion });
  });

  it('remember that sound is off, and how loud it was', async () => {
    const store = memoryStore();
    const changed = { ...usual, sound: false, workVolume: 20, machineVolume: 0 };
    await saveSettings(store, changed);
    expect(await loadSettings(store, usual)).toEqual(changed);
  });

  it.each([[-10], [110], [0.5], ['loud']])(
    'are the usual where a volume of %s was kept',
    async (workVolume) => {
      expect(await keptAs({ ...old, workVolume })).toEqual(usual);
    },
  );
});
