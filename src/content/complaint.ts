import type { Said } from './phrase';

/** One thing wrong with a file: where, what, and what is accepted instead. */
export type Complaint = { readonly path: string; readonly wrong: Said; readonly accepted: Said };

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly complaints: readonly Complaint[] };

export const complaint = (path: string, wrong: Said, accepted: Said): Complaint => ({
  path,
  wrong,
  accepted,
});

/** `path.to.key`, or `$` for the whole file. A key that is no plain word is told in quotes. */
export const pathText = (path: readonly PropertyKey[]): string =>
  path.length === 0 ? '$' : path.map(partText).join('.');

const partText = (part: PropertyKey): string => {
  const text = String(part);
  return /^[\w$-]+$/.test(text) ? text : JSON.stringify(text);
};
