import { complaint, pathText, type Complaint, type Read } from './complaint';

/** Larger files than this are not read: no roof, level or attempt comes near it. Bytes. */
export const largestFile = 1_000_000;

/** Text to plain data, or one clear complaint. Keys that reach into the language itself are refused by path. */
export const readJson = (text: string, largest: number = largestFile): Read<unknown> => {
  const megabytes = Math.round(largest / 1_000_000);
  if (new TextEncoder().encode(text).length > largest)
    return no('$', `the file is over ${megabytes} MB`, `a file of at most ${megabytes} MB`);
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') return no('$', 'the file is empty', 'a JSON object');
  const parsed = parse(bare);
  if (!parsed) return no('$', 'is not JSON', 'a JSON object');
  const wrong = unsafe(parsed.value, []);
  return wrong ? { ok: false, complaints: [wrong] } : { ok: true, value: parsed.value };
};

const parse = (text: string): { readonly value: unknown } | undefined => {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
};

const no = (path: string, wrong: string, accepted: string): Read<never> => ({
  ok: false,
  complaints: [complaint(path, wrong, accepted)],
});

const reserved = ['__proto__', 'constructor', 'prototype'];

/** No file of ours nests deeper; what does is not walked to the end. */
const deepest = 32;

const unsafe = (value: unknown, path: readonly string[]): Complaint | undefined => {
  if (typeof value !== 'object' || value === null) return undefined;
  if (path.length >= deepest) return complaint('$', 'is nested too deep', `at most ${deepest} levels`);
  for (const [key, inner] of Object.entries(value)) {
    const here = [...path, key];
    if (reserved.includes(key))
      return complaint(pathText(here), 'is not a key here', 'only the keys of the format');
    const deeper = unsafe(inner, here);
    if (deeper !== undefined) return deeper;
  }
  return undefined;
};
