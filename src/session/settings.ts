import { readSettings, usualSound, type Settings } from '../content/settingsSchema';
import type { Store } from './store';

export type { Settings };

/** What a device starts with: its own language and its own light. */
export const usualSettings = (language: string, dark: boolean): Settings => ({
  lang: language.startsWith('es') ? 'es' : 'en',
  theme: dark ? 'night' : 'day',
  units: 'feet',
  hand: 'right',
  text: '100',
  keys: true,
  motion: 'device',
  ...usualSound,
});

/** What was kept, or the usual where nothing usable was. */
export const loadSettings = async (store: Store, usual: Settings): Promise<Settings> =>
  readSettings(await store.get('settings').catch(() => undefined)) ?? usual;

export const saveSettings = (store: Store, settings: Settings): Promise<void> =>
  store.put('settings', settings).catch(() => undefined);
