import { complaint, pathText, type Complaint, type Read } from './complaint';

/** Larger files than this are not read: no roof, level or attempt comes near it. Bytes. */
export const largestFile = 1_000_000;

/** Text to plain data, or one clear complaint. Keys that reach into the language itself are refused by path. */
export const readJson = (text: string, largest: number = largestFile): Read<unknown> => {
  if (new TextEncoder().encode(text).length > largest) return no(tooLarge(largest));
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') return no(complaint('$', ['empty'], ['jsonObject']));
  const parsed = parse(bare);
  if (!parsed) return no(complaint('$', ['notJson'], ['jsonObject']));
  const wrong = unsafe(parsed.value, []);
  return wrong ? no(wrong) : { ok: true, value: parsed.value };
};

const parse = (text: string): { readonly value: unknown } | undefined => {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
};

const no = (one: Complaint): Read<never> => ({ ok: false, complaints: [one] });

/** Also for who knows the size before the text. */
export const tooLarge = (largest: number = largestFile): Complaint => {
  const megabytes = Math.round(largest / 1_000_000);
  return complaint('$', ['tooLarge', megabytes], ['fileAtMost', megabytes]);
};

const reserved = ['__proto__', 'constructor', 'prototype'];

/** No file of ours nests deeper; what does is not walked to the end. */
const deepest = 32;

const unsafe = (value: unknown, path: readonly string[]): Complaint | undefined => {
  if (typeof value !== 'object' || value === null) return undefined;
  if (path.length >= deepest) return complaint('$', ['tooDeep'], ['levelsAtMost', deepest]);
  for (const [key, inner] of Object.entries(value)) {
    const here = [...path, key];
    if (reserved.includes(key)) return complaint(pathText(here), ['notAKey'], ['onlyKeys']);
    const deeper = unsafe(inner, here);
    if (deeper !== undefined) return deeper;
  }
  return undefined;
};
