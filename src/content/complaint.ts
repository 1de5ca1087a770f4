/** One thing wrong with a file: where, what, and what is accepted instead. */
export type Complaint = { readonly path: string; readonly wrong: string; readonly accepted: string };

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly complaints: readonly Complaint[] };

export const complaint = (path: string, wrong: string, accepted: string): Complaint => ({
  path,
  wrong,
  accepted,
});

/** `file: path.to.key: what is wrong (what is accepted)`, on one line and without control characters whatever the file holds. */
export const complaintLine = (file: string, { path, wrong, accepted }: Complaint): string =>
  `${file}: ${path}: ${wrong} (${accepted})`.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ');

/** `path.to.key`, or `$` for the whole file. A key that is no plain word is told in quotes. */
export const pathText = (path: readonly PropertyKey[]): string =>
  path.length === 0 ? '$' : path.map(partText).join('.');

const partText = (part: PropertyKey): string => {
  const text = String(part);
  return /^[\w$-]+$/.test(text) ? text : JSON.stringify(text);
};
