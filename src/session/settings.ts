import * as z from 'zod/mini';
import type { Store } from './store';

const schema = z.strictObject({
  lang: z.enum(['en', 'es']),
  theme: z.enum(['day', 'night']),
  units: z.enum(['feet', 'decimal', 'mm']),
  hand: z.enum(['left', 'right']),
  text: z.enum(['100', '150', '200']),
  keys: z.boolean(),
});

/** How somebody likes to work. Kept on the device, never asked for twice. */
export type Settings = z.infer<typeof schema>;

export const usualSettings = (language: string, dark: boolean): Settings => ({
  lang: language.startsWith('es') ? 'es' : 'en',
  theme: dark ? 'night' : 'day',
  units: 'feet',
  hand: 'right',
  text: '100',
  keys: true,
});

/** What was kept, or the usual where nothing usable was. */
export const loadSettings = async (store: Store, usual: Settings): Promise<Settings> => {
  const kept = await store.get('settings').catch(() => undefined);
  const read = z.safeParse(schema, kept);
  return read.success ? read.data : usual;
};

export const saveSettings = (store: Store, settings: Settings): Promise<void> =>
  store.put('settings', settings).catch(() => undefined);
