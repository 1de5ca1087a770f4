import { complaint, type Read } from './complaint';

/** Larger files than this are not read: no roof, level or attempt comes near it. Bytes. */
export const largestFile = 1_000_000;

/** Text to plain data, or one clear complaint. Keys that reach into the language itself are refused by path. */
export const readJson = (text: string): Read<unknown> => {
  if (new TextEncoder().encode(text).length > largestFile)
    return no('$', 'the file is over 1 MB', 'a file of at most 1 MB');
  if (text.trim() === '') return no('$', 'the file is empty', 'a JSON object');
  try {
    const value: unknown = JSON.parse(text);
    const bad = poisoned(value, '$');
    return bad === undefined
      ? { ok: true, value }
      : no(bad, 'is not a key here', 'only the keys of the format');
  } catch {
    return no('$', 'is not JSON', 'a JSON object');
  }
};

const no = (path: string, wrong: string, accepted: string): Read<never> => ({
  ok: false,
  complaints: [complaint(path, wrong, accepted)],
});

const reserved = ['__proto__', 'constructor', 'prototype'];

const poisoned = (value: unknown, path: string): string | undefined => {
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const here = path === '$' ? key : `${path}.${key}`;
    if (reserved.includes(key)) return here;
    const deeper = poisoned(inner, here);
    if (deeper !== undefined) return deeper;
  }
  return undefined;
};
